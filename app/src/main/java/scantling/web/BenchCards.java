package scantling.web;

import java.util.List;
import scantling.drawing.Drawing;

/** Where a job's cards come from: the order in which things are done at the bench. */
interface BenchCards {
    /**
     * All cards of a plan.
     *
     * @param cards in the order of work
     * @param drawings what they show, by number
     */
    record Deck(List<BenchCard> cards, List<Drawing> drawings) {
        /** Takes its own copies. */
        public Deck {
            cards = List.copyOf(cards);
            drawings = List.copyOf(drawings);
        }
    }

    /** The cards. */
    Deck deck();
}
