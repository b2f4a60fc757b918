package scantling.finishing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.piece.FinishText;
import scantling.piece.Problem;
import scantling.piece.Spelling;
import scantling.timber.Table;

/** Reads the maker's own coats: each like a known one, with other figures. */
final class OwnCoats {
    private static final Table FACTS = Table.read("finishing/facts.csv");
    private static final String NUMBER = "-?\\d{1,6}(?:\\.\\d{1,4})?";
    private static final Pattern RANGE =
            Pattern.compile("(" + NUMBER + ")(?:\\s*(?:to|-)\\s*(" + NUMBER + "))?\\s*(\\D.*)?");
    private static final Map<String, List<String>> WORDS = Map.of(
            "like", List.of(),
            "role", List.of("stain", "sealer", "filler", "primer", "top", "wax"),
            "builds", List.of("film", "penetrating"),
            "binder", List.of(),
            "solvent", List.of());

    private final CoatTable known;
    private final List<Problem> problems;

    OwnCoats(CoatTable known, List<Problem> problems) {
        this.known = known;
        this.problems = problems;
    }

    CoatTable with(List<FinishText.Own> said) {
        List<Coat> own = new ArrayList<>();
        said.forEach(one -> coat(one).ifPresent(own::add));
        return own.isEmpty() ? known : known.with(own);
    }

    private Optional<Coat> coat(FinishText.Own said) {
        Optional<FinishText.Word> like = Optional.ofNullable(said.facts().get("like"));
        String model = like.map(FinishText.Word::text).orElse(said.name());
        Optional<Coat> base = known.find(model);
        if (base.isEmpty()) {
            problems.add(new Problem(
                    like.map(FinishText.Word::span).orElse(said.span()),
                    "No coat is called \"%s\".".formatted(model),
                    "Say what it is like: %s.".formatted(String.join(", ", nearest(model)))));
            return Optional.empty();
        }
        Map<String, Coat.Fact> facts = new LinkedHashMap<>();
        Map<String, String> words = new LinkedHashMap<>();
        said.facts().forEach((key, word) -> {
            if (WORDS.containsKey(key)) {
                word(key, word).ifPresent(text -> words.put(key, text));
            } else {
                fact(key, word).ifPresent(fact -> facts.put(key, fact));
            }
        });
        Coat coat = base.get().with(said.name(), words, facts);
        judge(coat, said);
        return Optional.of(coat);
    }

    private List<String> nearest(String model) {
        List<String> nearest = known.nearest(model);
        return nearest.isEmpty() ? known.all().stream().map(Coat::name).limit(5).toList() : nearest;
    }

    private Optional<String> word(String key, FinishText.Word word) {
        List<String> allowed = WORDS.getOrDefault(key, List.of());
        if (!allowed.isEmpty() && !allowed.contains(word.text())) {
            problems.add(new Problem(
                    word.span(),
                    "\"%s\" cannot be %s.".formatted(key, word.text()),
                    "Say one of: %s.".formatted(String.join(", ", allowed))));
            return Optional.empty();
        }
        return Optional.of(word.text());
    }

    private Optional<Coat.Fact> fact(String key, FinishText.Word word) {
        Optional<Table.Row> kind = FACTS.findRow("fact", key);
        List<String> keys = FACTS.rows().stream().map(row -> row.text("fact")).toList();
        if (kind.isEmpty()) {
            problems.add(new Problem(
                    word.span(),
                    "\"%s\" cannot be said of a coat.".formatted(key),
                    (Spelling.maybe(key, keys) + " Allowed: like, role, builds, binder, solvent, "
                                    + String.join(", ", keys) + ".")
                            .strip()));
            return Optional.empty();
        }
        Optional<Amount> amount = amount(word.text(), kind.get());
        if (amount.isEmpty()) {
            problems.add(new Problem(
                    word.span(),
                    "\"%s\" is no figure for \"%s\" (%s)."
                            .formatted(word.text(), key, kind.get().text("says")),
                    "Write a number from %s to %s in %s, or two: 2 to 4 %s."
                            .formatted(
                                    kind.get().text("least"),
                                    kind.get().text("most"),
                                    kind.get().text("unit"),
                                    kind.get().text("unit"))));
        }
        return amount.map(value -> new Coat.Fact(value, kind.get().text("unit"), "the maker's own figure", "yes"));
    }

    private static Optional<Amount> amount(String text, Table.Row kind) {
        Matcher range = RANGE.matcher(text.strip());
        if (!range.matches()) {
            return Optional.empty();
        }
        String unit =
                Optional.ofNullable(range.group(3)).orElse(kind.text("unit")).strip();
        double low = Double.parseDouble(range.group(1));
        double high = Double.parseDouble(Optional.ofNullable(range.group(2)).orElse(range.group(1)));
        boolean fits = kind.list("units").contains(unit)
                && low >= kind.number("least")
                && high <= kind.number("most")
                && low <= high;
        return fits ? Optional.of(Amount.between(low, high)) : Optional.empty();
    }

    /** A coat system with a hole in it. */
    private void judge(Coat coat, FinishText.Own said) {
        Optional<Amount> after = coat.find("recoat after");
        Optional<Amount> before = coat.find("recoat before");
        if (after.isPresent()
                && before.isPresent()
                && before.get().high() < after.get().low()) {
            problems.add(new Problem(
                    said.span(),
                    "\"%s\" must be recoated before %s h and not before %s h: no time is left."
                            .formatted(
                                    coat.name(),
                                    Say.number(before.get().high()),
                                    Say.number(after.get().low())),
                    "Put \"recoat after\" or \"recoat before\" right."));
        }
        if (Coverage.spread(coat, Method.find(coat.method()).orElseThrow(), 0).isEmpty()) {
            problems.add(new Problem(
                    said.span(),
                    "\"%s\" has neither a spread nor solids and dry film: what to buy cannot be worked out."
                            .formatted(coat.name()),
                    "Add spread: 12 m2/L, or solids: 30 % and dry film: 25 um."));
        }
    }
}
