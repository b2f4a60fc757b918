package scantling.finishing;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.piece.FinishText;
import scantling.piece.Problem;

/**
 * How the shop finishes, as the maker says.
 *
 * @param by how all of it is put on, where said
 * @param air what it dries in
 * @param sand the last grit before the finish, where said
 * @param use food or nursery, where said
 */
record Habits(Optional<Method> by, Air air, Optional<Double> sand, Optional<String> use) {
    private static final Pattern AIR =
            Pattern.compile("(-?\\d{1,2}(?:\\.\\d)?)\\s*(C|F|\u00b0C|\u00b0F)(?:\\s*,?\\s*(\\d{1,3})\\s*%.*)?");
    private static final Pattern GRIT = Pattern.compile("(?:grit\\s*)?(\\d{2,4})(?:\\s*grit)?");
    private static final int COARSEST = 40;
    private static final int FINEST = 3000;
    private static final int COLDEST = -20;
    private static final int HOTTEST = 50;
    private static final List<String> USES = List.of("food", "nursery");

    static Habits of(FinishText text, List<Problem> problems) {
        return new Habits(
                method(Optional.ofNullable(text.settings().get("by")), problems),
                Optional.ofNullable(text.settings().get("air"))
                        .flatMap(word -> air(word, problems))
                        .orElseGet(Air::usual),
                grit(Optional.ofNullable(text.settings().get("sand")), problems),
                use(Optional.ofNullable(text.settings().get("use")), problems));
    }

    /** The same with what a group says otherwise. */
    Habits in(FinishText.Group group, List<Problem> problems) {
        return new Habits(
                method(group.by(), problems).or(() -> by),
                air,
                grit(group.sand(), problems).or(() -> sand),
                use);
    }

    private static Optional<Method> method(Optional<FinishText.Word> word, List<Problem> problems) {
        Optional<Method> method = word.flatMap(said -> Method.find(said.text()));
        if (word.isPresent() && method.isEmpty()) {
            problems.add(new Problem(
                    word.get().span(),
                    "\"%s\" is no way to put on a finish.".formatted(word.get().text()),
                    "Say one of: %s."
                            .formatted(String.join(
                                    ", ",
                                    Method.all().stream().map(Method::name).toList()))));
        }
        return method;
    }

    private static Optional<Air> air(FinishText.Word word, List<Problem> problems) {
        Matcher said = AIR.matcher(word.text());
        if (said.matches()) {
            double degrees = Double.parseDouble(said.group(1));
            double celsius = said.group(2).endsWith("F") ? (degrees - 32) * 5 / 9 : degrees;
            double humidity = said.group(3) == null ? Air.usual().humidity() : Double.parseDouble(said.group(3));
            if (celsius >= COLDEST && celsius <= HOTTEST && humidity > 0 && humidity <= 100) {
                return Optional.of(new Air(celsius, humidity));
            }
        }
        problems.add(new Problem(
                word.span(),
                "\"%s\" is no air a finish can dry in.".formatted(word.text()),
                "Write a temperature and a humidity: 18 C, 55 %."));
        return Optional.empty();
    }

    private static Optional<Double> grit(Optional<FinishText.Word> word, List<Problem> problems) {
        Optional<Double> grit = word.map(said -> GRIT.matcher(said.text()))
                .filter(Matcher::matches)
                .map(said -> Double.valueOf(said.group(1)))
                .filter(number -> number >= COARSEST && number <= FINEST);
        if (word.isPresent() && grit.isEmpty()) {
            problems.add(new Problem(
                    word.get().span(),
                    "\"%s\" is no grit.".formatted(word.get().text()),
                    "Write a number from %d to %d: 180.".formatted(COARSEST, FINEST)));
        }
        return grit;
    }

    private static Optional<String> use(Optional<FinishText.Word> word, List<Problem> problems) {
        if (word.isPresent() && !USES.contains(word.get().text())) {
            problems.add(new Problem(
                    word.get().span(),
                    "\"%s\" is no use that changes a finish."
                            .formatted(word.get().text()),
                    "Say food or nursery, or leave it out."));
            return Optional.empty();
        }
        return word.map(FinishText.Word::text);
    }
}
