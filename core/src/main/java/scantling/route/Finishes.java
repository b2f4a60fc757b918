package scantling.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Assembly;
import scantling.construct.Part;

/** Finishing as the piece words it, where no coat system says more. */
final class Finishes {
    private static final Pattern COATS = Pattern.compile("^(.*?)\\s+x\\s+(\\d{1,2})$");
    private static final List<String> WORDS = List.of("lacquer", "varnish", "shellac", "wax", "stain", "oil");

    private Finishes() {}

    static List<CoatStep> asSaid(Assembly assembly) {
        List<String> parts = assembly.parts().stream().map(Part::path).toList();
        double square = assembly.parts().stream().mapToDouble(CoatStep::square).sum();
        List<CoatStep> steps = new ArrayList<>();
        for (Map.Entry<String, String> said : assembly.piece().finish().entrySet()) {
            Matcher coats = COATS.matcher(said.getValue());
            boolean counted = coats.matches();
            int count = counted ? Math.max(1, Integer.parseInt(coats.group(2))) : 1;
            String what = counted ? coats.group(1) : said.getValue();
            for (int coat = 1; coat <= count; coat++) {
                String title = count == 1
                        ? "%s: %s".formatted(said.getKey(), what)
                        : "%s: %s, coat %d of %d".formatted(said.getKey(), what, coat, count);
                steps.add(new CoatStep(title, parts, square, pause(said.getKey() + " " + what), false));
            }
        }
        return steps;
    }

    private static Pause pause(String words) {
        String said = words.toLowerCase(Locale.ROOT);
        return WORDS.stream()
                .filter(said::contains)
                .findFirst()
                .flatMap(Pause::find)
                .orElseGet(() -> Pause.of("any coat"));
    }
}
