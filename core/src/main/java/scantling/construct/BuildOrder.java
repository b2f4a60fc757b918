package scantling.construct;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import scantling.piece.Element;

/**
 * The order in which things are built, whatever the order they are written in: what lies outside the rest first, then
 * what stands, then what closes it in front, then what fills it. A top may so be written after the case it lies on, and
 * doors before it. Elements of one rank keep their order. Boards, frames and loose parts stand for nothing but
 * themselves and stay where they are written.
 */
final class BuildOrder {
    /** Common practice: a case goes under its top, doors before its shelves. */
    private static final List<List<String>> RANKS = List.of(
            List.of("top", "plinth", "back", "face frame"),
            List.of("case", "ends", "legs and rails", "posts"),
            List.of("rails", "panel"),
            List.of("doors", "drawers", "drawer"),
            List.of("columns", "rows", "depths", "shelves", "slats", "hanging rail"));

    private static final Map<String, Integer> RANK_OF = rankOf();

    private BuildOrder() {}

    /** The steps as they are to be built. */
    static List<Element> of(List<Element> written) {
        List<Element> order = new ArrayList<>();
        for (Element element : written) {
            order.add(place(element, order), element);
        }
        return List.copyOf(order);
    }

    private static int place(Element element, List<Element> before) {
        OptionalInt rank = rank(element);
        for (int i = 0; rank.isPresent() && i < before.size(); i++) {
            OptionalInt other = rank(before.get(i));
            if (other.isPresent() && other.getAsInt() > rank.getAsInt()) {
                return i;
            }
        }
        return before.size();
    }

    private static OptionalInt rank(Element element) {
        Integer rank = RANK_OF.get(element.kind());
        return rank == null ? OptionalInt.empty() : OptionalInt.of(rank);
    }

    private static Map<String, Integer> rankOf() {
        Map<String, Integer> ranks = new HashMap<>();
        for (int i = 0; i < RANKS.size(); i++) {
            for (String kind : RANKS.get(i)) {
                ranks.put(kind, i);
            }
        }
        return Map.copyOf(ranks);
    }
}
