package scantling.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import scantling.measure.Length;

/**
 * Pieces of stock that are cut alike: the same stock, the same cuts in the same order, the same sizes out of them. Only which
 * parts these become may differ, so that one drawing and one list of settings serve them all.
 *
 * @param pieces one or more, in the order of the plan
 */
public record AlikePieces(List<CutPiece> pieces) {
    private static final CutPart ANY = new CutPart("", Length.mm(1), Length.ZERO, 1, false);

    private record Key(Stock stock, CutTree cuts) {}

    /** Takes its own copy. */
    public AlikePieces {
        pieces = List.copyOf(pieces);
    }

    /** Pieces of stock, those cut alike together, in the order of the first of each. */
    public static List<AlikePieces> of(List<CutPiece> used) {
        Map<Key, List<CutPiece>> alike = new LinkedHashMap<>();
        used.forEach(piece -> alike.computeIfAbsent(
                        new Key(piece.stock(), nameless(piece.tree())), k -> new ArrayList<>())
                .add(piece));
        return alike.values().stream().map(AlikePieces::new).toList();
    }

    private static CutTree nameless(CutTree tree) {
        if (tree instanceof CutTree.Cut cut) {
            return new CutTree.Cut(cut.direction(), cut.position(), nameless(cut.first()), nameless(cut.second()));
        }
        if (tree instanceof CutTree.Part part) {
            PlacedPart at = part.placed();
            return new CutTree.Part(new PlacedPart(ANY, 1, at.x(), at.y(), at.length(), at.width(), at.turned()));
        }
        return tree;
    }

    /** The one that is drawn for all. */
    public CutPiece first() {
        return pieces.get(0);
    }

    /** How many there are. */
    public int count() {
        return pieces.size();
    }

    /** Their numbers in the plan, in words: 1 to 6, 9. */
    public String numbers() {
        List<String> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= pieces.size(); i++) {
            if (i == pieces.size() || number(i) != number(i - 1) + 1) {
                runs.add(run(number(from), number(i - 1)));
                from = i;
            }
        }
        return String.join(", ", runs);
    }

    private int number(int at) {
        return pieces.get(at).number();
    }

    private static String run(int from, int to) {
        return from == to ? "%d".formatted(from) : "%d %s %d".formatted(from, to == from + 1 ? "and" : "to", to);
    }

    /** Those that give the same parts together. @param called what a part is called where this is told */
    public List<AlikePieces> byParts(UnaryOperator<String> called) {
        Map<List<String>, List<CutPiece>> by = new LinkedHashMap<>();
        pieces.forEach(piece -> by.computeIfAbsent(
                        piece.parts().stream()
                                .map(placed -> called.apply(placed.part().name()))
                                .toList(),
                        names -> new ArrayList<>())
                .add(piece));
        return by.values().stream().map(AlikePieces::new).toList();
    }

    /** Which cuts, by their place in the list of cuts, do not free the same parts from all. @param called as for parts */
    public List<Integer> differing(UnaryOperator<String> called) {
        return IntStream.range(0, first().steps().size())
                .filter(at -> pieces.stream()
                                .map(piece -> piece.steps().get(at))
                                .map(step -> List.of(called.apply(step.first()), called.apply(step.second())))
                                .collect(Collectors.toSet())
                                .size()
                        > 1)
                .boxed()
                .toList();
    }
}
