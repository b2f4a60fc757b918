package scantling.cutting;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.stock.Defect;

/** Reads one job from JSON, collecting everything that is wrong. */
final class JobReader {
    private static final int MOST_PARTS = 20_000;

    private final List<String> problems = new ArrayList<>();
    private final JobFields fields = new JobFields(problems);
    private Unit unit = Unit.MM;
    /** What is left over at a mitred end of a stick. */
    private Length mitre = Length.ZERO;

    CutJson.Reading read(JsonNode tree) {
        if (!tree.isObject()) {
            return CutJson.Reading.wrong(List.of("A cut job must be a JSON object."));
        }
        fields.known(tree, "", JobFields.JOB);
        String symbol = tree.path("unit").asText("mm");
        CutJson.unit(symbol)
                .ifPresentOrElse(u -> unit = u, () -> say("unit: (%s) is not one of mm, cm, m, in, ft.", symbol));
        Saw saw = saw(tree.path("saw"));
        CutJob.Keep keep = keep(tree.path("keep"));
        Wishes wishes = wishes(tree.path("wishes"));
        List<Stock> stock = stock(tree);
        boolean sticks = tree.has("sticks");
        List<CutPart> parts = new ArrayList<>();
        int at = 0;
        for (JsonNode node : list(tree, "parts")) {
            part(node, "parts[%d]".formatted(at++), sticks).ifPresent(parts::add);
        }
        if (parts.stream().mapToLong(CutPart::count).sum() > MOST_PARTS) {
            say("parts: more than (%d) pieces in one job.", MOST_PARTS);
        }
        if (problems.isEmpty()) {
            problems.addAll(Rows.problems(new CutJob(saw, keep, stock, parts, wishes)));
        }
        return problems.isEmpty()
                ? new CutJson.Reading(Optional.of(new CutJob(saw, keep, stock, parts, wishes)), List.of(), unit)
                : CutJson.Reading.wrong(problems);
    }

    private Saw saw(JsonNode node) {
        fields.known(node, "saw", JobFields.SAW);
        Length kerf = lengthOr(node, "kerf", "saw", Length.ZERO);
        mitre = lengthOr(node, "mitre", "saw", Length.ZERO);
        Length trim = lengthOr(node, "trim", "saw", Length.ZERO);
        int stages = node.path("stages").asInt(0);
        if (stages < 0
                || stages > 50
                || (node.has("stages") && !node.path("stages").isInt())) {
            say("saw.stages: (%s) must be a whole number, 0 for any.", node.path("stages"));
            stages = 0;
        }
        String first = node.path("firstCut").asText("any");
        for (FirstCut cut : FirstCut.values()) {
            if (cut.name().equals(first.toUpperCase(Locale.ROOT))) {
                return new Saw(kerf, trim, stages, cut);
            }
        }
        say("saw.firstCut: (%s) is not one of any, along, across.", first);
        return new Saw(kerf, trim, stages, FirstCut.ANY);
    }

    private CutJob.Keep keep(JsonNode node) {
        fields.known(node, "keep", JobFields.KEEP);
        return new CutJob.Keep(
                lengthOr(node, "longer", "keep", CutJob.Keep.USUAL.longer()),
                lengthOr(node, "shorter", "keep", CutJob.Keep.USUAL.shorter()));
    }

    private Wishes wishes(JsonNode node) {
        fields.known(node, "wishes", JobFields.WISHES);
        Wishes usual = Wishes.USUAL;
        return new Wishes(
                wish(node, "setting", usual.setting()),
                wish(node, "cut", usual.cut()),
                wish(node, "offcut", usual.offcut()),
                wish(node, "sizes", usual.sizes()),
                fields.flag(node, "nearEdge", "wishes", usual.nearEdge()),
                wish(node, "together", usual.together()));
    }

    private double wish(JsonNode node, String field, double usual) {
        JsonNode value = node.path(field);
        if (value.isMissingNode()) {
            return usual;
        }
        if (!value.isNumber() || value.asDouble() < 0) {
            say("wishes.%s: (%s) must be a number, 0 or more.", field, value);
            return usual;
        }
        return value.asDouble();
    }

    private List<Stock> stock(JsonNode tree) {
        List<Stock> stock = new ArrayList<>();
        int kinds = 0;
        for (String kind : List.of("sheets", "boards", "sticks")) {
            if (tree.has(kind)) {
                kinds++;
                int at = 0;
                for (JsonNode node : list(tree, kind)) {
                    stock(node, kind, "%s[%d]".formatted(kind, at++)).ifPresent(stock::add);
                }
            }
        }
        if (kinds != 1) {
            say("A job must have exactly one of sheets, boards and sticks; this has (%d).", kinds);
        }
        return stock;
    }

    private Optional<Stock> stock(JsonNode node, String kind, String where) {
        int before = problems.size();
        if (!fields.known(node, where, JobFields.stock(kind))) {
            return Optional.empty();
        }
        String name = node.path("name").asText(where);
        Length length = length(node, "length", where);
        Length width = kind.equals("sticks") ? Length.mm(1) : length(node, "width", where);
        JsonNode count = node.path("count");
        if (!count.isMissingNode() && !count.isNull() && (!count.isInt() || count.intValue() < 0)) {
            say("%s.count: (%s) must be a whole number, or null for as many as wanted.", where, count);
        }
        JsonNode cost = node.path("cost");
        if (!cost.isMissingNode() && (!cost.canConvertToExactIntegral() || cost.asLong() < 0)) {
            say("%s.cost: (%s) must be a whole number, 0 or more.", where, cost);
        }
        if (problems.size() > before) {
            return Optional.empty();
        }
        OptionalInt have = CutJson.count(count);
        long money = cost.asLong(1);
        boolean trimmed = fields.flag(node, "trimmed", where, false);
        boolean onHand = fields.flag(node, "onHand", where, false);
        List<Defect> defects = kind.equals("boards") ? defects(node, where) : List.of();
        if (problems.size() > before) {
            return Optional.empty();
        }
        return Optional.of(
                switch (kind) {
                    case "sheets" -> new Stock.SheetStock(name, length, width, have, money, trimmed, onHand);
                    case "boards" -> new Stock.BoardStock(name, length, width, have, money, onHand, defects);
                    default -> new Stock.StickStock(name, length, have, money, trimmed, onHand);
                });
    }

    /** In the words of the maker, as in {@code "300 to 420"}, or as {@code {"from": 300, "to": 420, "edge": "near", "deep": 40}}. */
    private List<Defect> defects(JsonNode node, String where) {
        List<Defect> all = new ArrayList<>();
        int at = 0;
        for (JsonNode one : node.path("defects")) {
            String here = "%s.defects[%d]".formatted(where, at++);
            Optional<Defect> read = one.isTextual() ? Defect.read(one.asText(), unit) : defect(one, here);
            read.ifPresentOrElse(
                    all::add,
                    () -> say("%s: (%s) is not a stretch such as \"300 to 420, 40 off the near edge\".", here, one));
        }
        return all;
    }

    private Optional<Defect> defect(JsonNode node, String where) {
        if (!fields.known(node, where, JobFields.DEFECT)) {
            return Optional.empty();
        }
        Length from = lengthOr(node, "from", where, Length.ZERO);
        Length to = lengthOr(node, "to", where, Defect.END);
        Length deep = lengthOr(node, "deep", where, Length.ZERO);
        String edge = node.path("edge").asText("whole").toUpperCase(Locale.ROOT);
        for (Defect.Edge one : Defect.Edge.values()) {
            if (one.name().equals(edge) && to.compareTo(from) > 0 && (one == Defect.Edge.WHOLE) != deep.isPositive()) {
                return Optional.of(new Defect(from, to, one, deep));
            }
        }
        return Optional.empty();
    }

    private Optional<CutPart> part(JsonNode node, String where, boolean stick) {
        int before = problems.size();
        if (!fields.known(node, where, JobFields.part(stick))) {
            return Optional.empty();
        }
        String name = node.path("name").asText(where);
        Length length = length(node, "length", where).plus(mitre.times(mitres(node, where)));
        Length width = stick ? Length.ZERO : length(node, "width", where);
        boolean turn = fields.flag(node, "turn", where, false);
        boolean glued = fields.flag(node, "glued", where, false);
        String row = stick ? "" : fields.word(node, "row", where);
        String beside = stick ? "" : fields.word(node, "beside", where);
        JsonNode count = node.path("count");
        if (!count.isMissingNode() && (!count.isInt() || count.intValue() < 1)) {
            say("%s.count: (%s) must be a whole number, 1 or more.", where, count);
        }
        return problems.size() > before
                ? Optional.empty()
                : Optional.of(new CutPart(name, length, width, count.asInt(1), turn, row, beside, glued));
    }

    private int mitres(JsonNode node, String where) {
        JsonNode value = node.path("mitres");
        if (!value.isMissingNode() && (!value.isInt() || value.intValue() < 0 || value.intValue() > 2)) {
            say("%s.mitres: (%s) must be 0, 1 or 2: how many of its ends are mitred.", where, value);
            return 0;
        }
        return value.asInt(0);
    }

    private List<JsonNode> list(JsonNode tree, String field) {
        JsonNode list = tree.path(field);
        List<JsonNode> nodes = new ArrayList<>();
        if (!list.isArray()) {
            say("%s: a list is needed.", field);
        }
        list.forEach(nodes::add);
        return nodes;
    }

    private Length length(JsonNode node, String field, String where) {
        Length read = lengthOr(node, field, where, Length.ZERO);
        if (!node.has(field)) {
            say("%s.%s: a length is needed.", where, field);
        } else if (read.isZero()) {
            say("%s.%s: (%s) must be greater than zero.", where, field, node.path(field));
        }
        return read;
    }

    private Length lengthOr(JsonNode node, String field, String where, Length otherwise) {
        JsonNode value = node.path(field);
        if (value.isMissingNode()) {
            return otherwise;
        }
        String text = value.isNumber() ? value.decimalValue().toPlainString() : value.asText();
        Optional<Length> read = LengthReader.read(text, unit);
        if (read.isEmpty() || read.orElseThrow().isNegative()) {
            say("%s.%s: (%s) is not a length of zero or more.", where, field, value);
            return Length.mm(1);
        }
        return read.orElseThrow();
    }

    private void say(String words, Object... values) {
        problems.add(words.formatted(values));
    }
}
