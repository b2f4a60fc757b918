package scantling.bench.trust;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.piece.Field;
import scantling.piece.Language;
import scantling.piece.Shape;

/** Makes texts by the grammar of the language, right, nearly right and wrong: lengths, sums, pieces, jobs for the saw. */
final class Texts {
    static final List<String> TOKENS = List.of(
            "{",
            "}",
            "[",
            "]",
            ":",
            "- ",
            "\n",
            "  ",
            "'",
            "\"",
            "#",
            "&a ",
            "*a",
            "!!map ",
            "|",
            ">",
            "%",
            "@",
            "\t",
            "\u0000",
            "\uFEFF",
            "\uD83E\uDEB5",
            "é",
            "½",
            "0",
            "-5",
            "1/0",
            "9".repeat(40),
            "null",
            "rest",
            "width",
            "3 equal",
            "oak 45",
            "of",
            "case",
            "? ",
            "<<: ",
            "---\n",
            "...");
    private static final List<String> UNITS =
            List.of("", "", " mm", " cm", " m", " in", "\"", "'", " ft", " km", "%", "°");
    private static final List<String> NAMES =
            List.of("width", "depth", "height", "gap", "a b", "oak", "nothing", "drawer 2 / opening");
    private static final List<String> WORDS =
            List.of("yes", "no", "pins", "dado", "inset", "front", "oak", "ply 45", "nothing", "");
    private static final int DEEPEST = 4;

    private final Hand hand;
    private final Language language = Construction.language();
    private final List<String> starters =
            Starters.NAMES.stream().map(Texts::starter).toList();

    Texts(Hand hand) {
        this.hand = hand;
    }

    static String starter(String name) {
        try (InputStream in = Starters.open(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A length, as a bench writes one or not quite. */
    String length() {
        if (hand.oneIn(3)) {
            return String.valueOf(1 + hand.below(2000));
        }
        String text = hand.one(
                () -> number() + hand.of(UNITS),
                () -> hand.below(90) + " " + hand.below(70) + "/"
                        + hand.of(List.of("2", "4", "8", "16", "64", "0", "3")) + hand.of(UNITS),
                () -> hand.below(20) + "' " + hand.below(12) + "\"",
                () -> hand.below(20) + " ft " + hand.below(12) + " " + hand.below(8) + "/8 in",
                () -> "-" + number(),
                () -> "9".repeat(1 + hand.below(40)) + hand.of(UNITS),
                () -> "0." + "0".repeat(hand.below(30)) + "1 mm");
        return hand.oneIn(4) ? hand.damaged(text, TOKENS) : text;
    }

    private String number() {
        return hand.one(
                () -> String.valueOf(hand.below(3000)),
                () -> hand.below(3000) + "." + hand.below(1000),
                () -> hand.below(3000) + "," + hand.below(1000),
                () -> "1e" + hand.below(400),
                () -> "٣");
    }

    /** A sum of lengths. */
    String sum(int deep) {
        if (deep <= 0) {
            return hand.one(this::length, () -> hand.of(NAMES), this::number);
        }
        return hand.one(
                () -> sum(deep - 1) + hand.of(List.of(" + ", " - ", "*", " / ", " x ", " ")) + sum(deep - 1),
                () -> "(" + sum(deep - 1) + ")",
                () -> "-" + sum(deep - 1),
                () -> "(".repeat(hand.below(hand.oneIn(50) ? 4000 : 8)) + sum(deep - 1),
                () -> hand.of(NAMES));
    }

    /** A sum in a piece that is otherwise right. */
    String pieceOfSum() {
        return """
            piece: Shelf
            size: 900 wide, 300 deep, 400 high
            lengths:
              gap: %s
            materials:
              oak: {solid: white oak, thickness: %s}
            build:
              - case: {of: oak}
              - shelves: {of: oak, heights: [%s]}
            """.formatted(sum(hand.below(4)), hand.oneIn(8) ? sum(1) : "20", hand.oneIn(3) ? sum(2) : "200");
    }

    /** A piece: a starter damaged, or steps by the grammar. */
    String piece() {
        if (hand.oneIn(3)) {
            return hand.damaged(hand.of(starters), TOKENS);
        }
        String steps = hand.some(5, () -> "  - " + element(0)).stream().collect(Collectors.joining("\n"));
        String head = hand.oneIn(3)
                ? "piece: Thing\nsize: %s wide, %s deep, %s high\nunit: %s\n"
                        .formatted(length(), length(), length(), hand.of(List.of("mm", "in", "cm", "ell")))
                : "piece: Thing\nsize: 900 wide, 400 deep, 800 high\n";
        String rest =
                "materials:\n  oak: {solid: white oak, thickness: %s}\n  ply: {sheet: birch plywood, thickness: 18}\nbuild:\n%s\n"
                        .formatted(hand.oneIn(5) ? length() : "20", steps);
        String whole = head + (hand.oneIn(2) ? more() : "") + rest;
        return hand.oneIn(4) ? hand.damaged(whole, TOKENS) : whole;
    }

    private String more() {
        return hand.one(
                () -> "",
                () -> "home: {temperature: %s, humidity: %s}\n".formatted(number(), number()),
                () -> "shop: {temperature: %s, humidity: %s}\nmoisture: %s\n".formatted(number(), number(), number()),
                () -> "accepted: {%s: %s}\n".formatted(hand.of(NAMES), hand.of(WORDS)),
                () -> "sizes: {%s: %s}\n".formatted(hand.of(NAMES), sum(1)),
                () -> "finish: {%s: %s}\n".formatted(hand.of(WORDS), hand.of(WORDS)));
    }

    private String element(int deep) {
        Shape shape = hand.of(language.elements());
        return "{%s: %s}".formatted(shape.key(), fields(shape, deep));
    }

    private String fields(Shape shape, int deep) {
        String all = shape.fields().stream()
                .filter(field -> field.required() || hand.oneIn(3))
                .map(field -> field.key() + ": " + (hand.oneIn(40) ? hand.of(TOKENS) : right(field, deep)))
                .collect(Collectors.joining(", "));
        return "{" + all + "}";
    }

    /** Mostly as the guide shows it. */
    private String right(Field field, int deep) {
        boolean shown = !field.example().isEmpty() && field.shape().isEmpty() && field.kind() != Field.Kind.STEPS;
        return shown && hand.oneIn(2) ? field.example() : value(field, deep);
    }

    private String value(Field field, int deep) {
        return switch (field.kind()) {
            case LENGTH ->
                hand.oneIn(3) ? "\"" + sum(1).replace("\"", "") + "\"" : length().replaceAll("[{}\\[\\],:#\"']", "");
            case STOCK -> hand.of(List.of("oak", "ply", "oak 45", "ply 60", "nothing", "0"));
            case COUNT, COUNT_OR_NONE -> String.valueOf(hand.oneIn(30) ? 100_000 : hand.below(6) - 1);
            case CHOICE -> field.choices().isEmpty() || hand.oneIn(8) ? hand.of(WORDS) : hand.of(field.choices());
            case FLAG -> hand.of(List.of("yes", "no", "maybe"));
            case PORTIONS, LENGTHS -> "[" + String.join(", ", hand.some(4, () -> hand.below(400) + "")) + "]";
            case ANGLE, LEANS -> hand.below(100) + "°";
            case PART ->
                field.shape()
                        .filter(shape -> deep < DEEPEST)
                        .map(shape -> fields(shape, deep + 1))
                        .orElse("{}");
            case PARTS ->
                "["
                        + field.shape()
                                .filter(shape -> deep < DEEPEST)
                                .map(shape -> fields(shape, deep + 1))
                                .orElse("")
                        + "]";
            case STEPS -> deep < DEEPEST ? "[" + String.join(", ", hand.some(3, () -> element(deep + 1))) + "]" : "[]";
            default -> field.example().isEmpty() ? hand.of(WORDS) : field.example();
        };
    }

    /** A job for the saw as JSON. */
    String cutJob() {
        String stock = hand.of(List.of("sheets", "boards", "sticks"));
        boolean right = hand.oneIn(2);
        String text = "{\"unit\":\"%s\",\"saw\":{\"kerf\":%s,\"trim\":%s,\"stages\":%s},\"%s\":[%s],\"parts\":[%s]}"
                .formatted(
                        hand.of(right ? List.of("mm", "in") : List.of("mm", "in", "ell", "")),
                        right ? "3" : json(),
                        right ? "10" : json(),
                        right ? "0" : json(),
                        stock,
                        String.join(",", hand.some(3, () -> cutPart(right, 2440))),
                        String.join(",", hand.some(5, () -> cutPart(right, 300))));
        return hand.oneIn(3) ? hand.damaged(text, TOKENS) : text;
    }

    private String cutPart(boolean right, int most) {
        return right
                ? "{\"name\":\"p\",\"length\":%d,\"width\":%d,\"count\":%d}"
                        .formatted(most - hand.below(50), most / 2, 1 + hand.below(4))
                : "{\"name\":%s,\"length\":%s,\"width\":%s,\"count\":%s,\"turn\":%s,\"cost\":%s}"
                        .formatted(json(), json(), json(), json(), json(), json());
    }

    private String json() {
        return hand.one(
                () -> String.valueOf(hand.below(3000)),
                () -> "\"" + hand.below(3000) + " mm\"",
                () -> "-1",
                () -> "1e" + hand.below(400),
                () -> "null",
                () -> "true",
                () -> "[".repeat(hand.oneIn(40) ? 3000 : 1) + "]",
                () -> "\"" + "x".repeat(hand.below(20)) + "\"");
    }
}
