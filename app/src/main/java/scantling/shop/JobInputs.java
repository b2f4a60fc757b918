package scantling.shop;

import java.util.List;
import scantling.measure.Span;
import scantling.piece.BenchLog;
import scantling.plan.Shop;
import scantling.stock.Rack;

/**
 * All that a job's plan follows from, taken at one moment.
 *
 * @param job which
 * @param revision the text that counts
 * @param entries what the bench says and has not taken back, in order
 * @param settings what the shop has set for itself
 * @param rack what it has on hand
 */
record JobInputs(Job job, Revision revision, List<BenchEntry> entries, ShopSettings settings, Rack rack) {
    /** Where a bench entry stands in a text: nowhere. */
    static final Span NOWHERE = new Span(1, 1, 0, 0);

    JobInputs {
        entries = List.copyOf(entries);
    }

    /** The shop as the planner takes it. */
    Shop shop() {
        return settings.shop(rack);
    }

    BenchLog bench() {
        return BenchFold.of(entries);
    }
}
