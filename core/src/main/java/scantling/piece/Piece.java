package scantling.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Span;
import scantling.measure.Unit;

/**
 * A piece as the maker described it, read and checked.
 *
 * @param title what it is
 * @param client for whom, where said
 * @param unit the unit that all is told in
 * @param written the unit of lengths that name none, of what is written back, and of bits and fasteners to choose from
 * @param width overall, left to right
 * @param depth overall, front to back
 * @param height overall, from the floor
 * @param materials by the maker's names, in the order given
 * @param steps what is built, from the outside in
 * @param sizes numbers the maker sets against their sums, by path
 * @param finish what goes on it, step by step, in the maker's words
 * @param coating all that is said of the finish: the same steps, and what is finished otherwise
 * @param conditions the air it goes to, moisture of the wood, findings taken as they are
 * @param matched parts cut next to each other, so that the grain runs through them
 * @param text the whole text it was read from
 */
public record Piece(
        String title,
        Optional<String> client,
        Unit unit,
        Unit written,
        Dim width,
        Dim depth,
        Dim height,
        Map<String, Material> materials,
        List<Element> steps,
        Map<String, Dim> sizes,
        Map<String, String> finish,
        FinishText coating,
        Conditions conditions,
        List<Row> matched,
        String text) {
    /**
     * Parts whose grain runs through.
     *
     * @param lines what lies side by side across the grain; one line for parts that are only end to end
     * @param span where it is said
     */
    public record Row(List<Line> lines, Span span) {
        /** Takes its own copy. */
        public Row {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Some of them.
     *
     * @param parts their paths in order, a star for any one name
     * @param endToEnd one after the other along the grain; otherwise each is a line by itself
     */
    public record Line(List<String> parts, boolean endToEnd) {
        /** Takes its own copy. */
        public Line {
            parts = List.copyOf(parts);
        }
    }

    /** A piece of which no more is said of the finish than its steps, and nothing about conditions. */
    public Piece(
            String title,
            Optional<String> client,
            Unit unit,
            Dim width,
            Dim depth,
            Dim height,
            Map<String, Material> materials,
            List<Element> steps,
            Map<String, Dim> sizes,
            Map<String, String> finish,
            String text) {
        this(
                title,
                client,
                unit,
                unit,
                width,
                depth,
                height,
                materials,
                steps,
                sizes,
                finish,
                FinishText.of(finish),
                Conditions.NONE,
                List.of(),
                text);
    }

    /** The same told in another unit: every size, bit and fastener stays what it is, and all that is said of it is said in that unit. */
    public Piece told(Unit other) {
        return with(other, coating, conditions);
    }

    /**
     * The same in a shop: the air its pieces go to where the text names none, and the shop's own coats, unless the text has
     * some of the same name.
     */
    public Piece in(Optional<Conditions.Home> home, List<FinishText.Own> coats) {
        List<String> taken = coating.coats().stream().map(FinishText.Own::name).toList();
        List<FinishText.Own> all = new ArrayList<>(coats);
        all.removeIf(coat -> taken.contains(coat.name()));
        all.addAll(coating.coats());
        return with(
                unit,
                new FinishText(coating.steps(), coating.groups(), all, coating.settings()),
                new Conditions(
                        conditions.home().or(() -> home),
                        conditions.shop(),
                        conditions.moisture(),
                        conditions.sawn(),
                        conditions.accepted()));
    }

    private Piece with(Unit telling, FinishText finishing, Conditions air) {
        return new Piece(
                title, client, telling, written, width, depth, height, materials, steps, sizes, finish, finishing, air,
                matched, text);
    }
}
