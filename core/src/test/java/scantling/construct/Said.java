package scantling.construct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.measure.Unit;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.piece.Portion;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.piece.Value;
import scantling.space.Side;

/** Says elements in tests as a maker would, with their usual values filled in. */
final class Said {
    static final Span HERE = new Span(1, 1, 0, 1);

    private final Shape shape;
    private final Map<String, Value> values = new LinkedHashMap<>();
    private String name;

    private Said(Shape shape) {
        this.shape = shape;
        name = shape.key();
        shape.fields().forEach(field -> field.usual().ifPresent(usual -> values.put(field.key(), usual(field, usual))));
    }

    static Said an(String kind) {
        return new Said(Construction.language().find(kind).orElseThrow());
    }

    Said part(String key, Said part) {
        values.put(key, new Value.OfPart(part.done()));
        return this;
    }

    /** The fields inside one of the fields. */
    Said inside(String key) {
        return new Said(shape.fields().stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .flatMap(Field::shape)
                .orElseThrow());
    }

    Said named(String own) {
        name = own;
        return this;
    }

    Said of(String key, Material material) {
        values.put(key, new Value.OfStock(new Stock(material, Optional.empty())));
        return this;
    }

    Said of(String key, Material material, String width) {
        values.put(key, new Value.OfStock(new Stock(material, Optional.of(mm(width)))));
        return this;
    }

    Said is(String key, String words) {
        values.put(key, new Value.OfText(words));
        return this;
    }

    Said count(String key, int count) {
        values.put(key, new Value.OfCount(count));
        return this;
    }

    Said length(String key, String length) {
        values.put(key, new Value.OfLength(mm(length)));
        return this;
    }

    Said side(String key, Side side, String length) {
        values.put(key, new Value.OfSides(Map.of(side, mm(length))));
        return this;
    }

    Said equal(int number) {
        List<Portion> portions = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            portions.add(new Portion.Shares(1));
        }
        values.put("sizes", new Value.OfPortions(portions));
        return this;
    }

    Said fixed(String... sizes) {
        values.put(
                "sizes",
                new Value.OfPortions(List.of(sizes).stream()
                        .<Portion>map(size -> new Portion.Fixed(mm(size)))
                        .toList()));
        return this;
    }

    Said steps(String key, Said... steps) {
        values.put(
                key, new Value.OfParts(List.of(steps).stream().map(Said::done).toList()));
        return this;
    }

    Element done() {
        return new Element(shape.key(), name, values, HERE);
    }

    static Material sheet(String name, String thickness) {
        return material(name, Material.Kind.SHEET, thickness);
    }

    static Material solid(String name, String thickness) {
        return material(name, Material.Kind.SOLID, thickness);
    }

    private static Material material(String name, Material.Kind kind, String thickness) {
        return new Material(
                name,
                kind,
                name,
                mm(thickness),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
    }

    static Dim mm(String millimetres) {
        return Dim.given(Length.mm(millimetres), millimetres, millimetres, HERE);
    }

    /** Builds steps in a piece of that size with those measurements. */
    static Assembly build(String width, String depth, String height, Map<String, Length> measured, Said... steps) {
        Piece piece = new Piece(
                "test",
                Optional.empty(),
                Unit.MM,
                mm(width),
                mm(depth),
                mm(height),
                Map.of(),
                List.of(steps).stream().map(Said::done).toList(),
                Map.of(),
                Map.of(),
                "");
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(measured, Map.of(), tolerances.of("measured at the bench"));
        return Construction.assemble(piece, ledger, tolerances);
    }

    /** {@code path: length x width x thickness} of each part in millimetres. */
    static List<String> list(Assembly assembly) {
        return assembly.parts().stream()
                .map(part -> "%s: %s x %s x %s"
                        .formatted(part.path(), plain(part.length()), plain(part.width()), plain(part.thickness())))
                .toList();
    }

    private static String plain(Dim dim) {
        return dim.value().millimetres().stripTrailingZeros().toPlainString();
    }

    private static Value usual(Field field, String usual) {
        return switch (field.kind()) {
            case CHOICE, TEXT -> new Value.OfText(usual);
            case LENGTH -> new Value.OfLength(mm(usual.replace(" mm", "")));
            case COUNT, COUNT_OR_NONE -> new Value.OfCount(Integer.parseInt(usual));
            default -> throw new IllegalStateException(field.key());
        };
    }
}
