package scantling.piece;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A small language and a few woods to read test documents against. */
final class Bench {
    private static final Shape SPACE = Shape.of(
            "space",
            "One space and what is built in it.",
            Field.optional("build", Field.Kind.STEPS, "What is built in it.", "[drawer]"));

    private static final Shape BOARD = Shape.shortly(
            "board",
            "of",
            "A loose board.",
            Field.required("of", Field.Kind.STOCK, "The material.", "cherry 60"),
            Field.optional("long", Field.Kind.LENGTH, "How long.", "400"),
            Field.part(
                    "at",
                    Field.Kind.PART,
                    Shape.of(
                            "at",
                            "Where it stands.",
                            Field.usual("across", Field.Kind.LENGTH, "0", "common practice", "From the left.")),
                    "Where it stands.",
                    "{across: 10}"),
            Field.optional("outline", Field.Kind.OUTLINE, "Its corners.", "[[0, 0], [400, 0], [0, 60]]"));

    static final Language LANGUAGE = new Language(List.of(
            Shape.shortly(
                    "top",
                    "of",
                    "A top.",
                    Field.required("of", Field.Kind.STOCK, "The material.", "cherry"),
                    Field.optional("overhang", Field.Kind.SIDES, "How far it stands over.", "{front: 12, ends: 8}"),
                    Field.usual("reveal", Field.Kind.LENGTH, "2", "common practice", "Air below it."),
                    Field.choice("edge", "The shape of its edge.", "square", "rounded", "bevelled"),
                    Field.optional("breadboards", Field.Kind.FLAG, "Whether its ends are capped.", "yes")),
            Shape.shortly(
                    "rows",
                    "sizes",
                    "Divides a space from top to bottom.",
                    Field.required("sizes", Field.Kind.PORTIONS, "The sizes.", "[130, 150, rest]"),
                    Field.usual("gap", Field.Kind.LENGTH, "0", "common practice", "Air between them."),
                    Field.part("spaces", Field.Kind.PARTS, SPACE, "The spaces.", "[{name: upper}]")),
            Shape.of(
                    "drawer",
                    "A drawer.",
                    Field.usual("boxes", Field.Kind.COUNT, "1", "common practice", "How many boxes."),
                    Field.usual("side", Field.Kind.STOCK, "cherry", "common practice", "The material of its sides."),
                    Field.optional("note", Field.Kind.TEXT, "A remark.", "runs stiff"),
                    Field.optional("holes", Field.Kind.LENGTHS, "Where holes are.", "[32, 64]")),
            Shape.of(
                    "boards",
                    "Loose boards.",
                    Field.part("parts", Field.Kind.PARTS, BOARD, "The boards.", "{shelf: cherry 200}")
                            .butRequired())));

    private static final List<String> SOLIDS = List.of("black cherry", "white oak", "hard maple");
    private static final List<String> SHEETS = List.of("cherry-veneered MDF", "birch plywood");

    static final Woods WOODS = new Woods() {
        @Override
        public Optional<String> findSolid(String name) {
            return find(SOLIDS, name);
        }

        @Override
        public Optional<String> findSheet(String name) {
            return find(SHEETS, name);
        }

        @Override
        public List<String> solids() {
            return SOLIDS;
        }

        @Override
        public List<String> sheets() {
            return SHEETS;
        }
    };

    static final String CHEST = """
            piece: Bedside chest, three drawers   # one of a pair
            for: O. Finchweir
            unit: mm
            size: 500 wide, 420 deep, 620 high
            lengths:
              reveal: leg / 4        # used before it is given
              leg: 40
            materials:
              cherry:   {solid: black cherry, thickness: 20}
              veneered: {sheet: cherry-veneered MDF, thickness: 13, measured: 12.6}
              core:     {sheet: birch plywood, thickness: 18, sheet size: 1525 x 1524, grain: no, price: 84.00}
              edging:   {stick: black cherry, thickness: 1/4 in}
            build:
              - top: {of: cherry, overhang: {front: 12, ends: 8}}
              - rows:
                  sizes: [130, 150, rest]
                  gap: reveal - 8
                  spaces:
                    - {name: upper, build: [drawer: {note: "dry: waxed"}]}
                    - name: lower
                      build:
                        - drawer:
                            side: veneered 1 1/2 in
              - boards:
                  parts:
                    shelf: {of: cherry width / 2, long: width - 2 * cherry thickness, at: {across: -3}}
                    cleat: cherry 40
            sizes: {drawers / drawer 2 / front / width: 149}
            finish: {stain: oil, seal: dewaxed shellac, top: waterborne lacquer x 3}
            """;

    private Bench() {}

    private static Optional<String> find(List<String> names, String name) {
        return names.stream()
                .filter(known -> known.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    static ReadResult read(String text) {
        return PieceReader.read(text, LANGUAGE, WOODS);
    }

    /** A piece that must be right. */
    static Piece piece(String text) {
        ReadResult result = read(text);
        return result.piece().orElseThrow(() -> new AssertionError(result.problems()));
    }

    /** A document of which only a few lines matter. */
    static String with(String build, String... more) {
        return "piece: x\nsize: 500 wide, 420 deep, 620 high\nmaterials: {cherry: {solid: black cherry, thickness: 20}}\n"
                + String.join("\n", more)
                + "\nbuild:\n"
                + build.indent(2);
    }
}
