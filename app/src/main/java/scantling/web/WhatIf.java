package scantling.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.cutting.Effort;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.shop.JobPlan;
import scantling.shop.ShopStore;

/** Plans that are only looked at: nothing of them is written down. Their saw plans are the first that come to hand. */
final class WhatIf {
    private static final Span NOWHERE = new Span(1, 1, 0, 0);

    private WhatIf() {}

    /** With one more number measured. */
    static Plan measured(ShopStore store, JobPlan.Planned job, String name, Length size) {
        return plan(store, job.plan().assembly().piece(), with(job, name, size));
    }

    /**
     * Refuses a measured size with which a piece that can be built could not be: a slip of the tape or of the unit, that would
     * leave the maker without a plan.
     */
    static Optional<Refused> refusal(ShopStore store, JobPlan.Planned job, String name, Length size) {
        if (!job.plan().problems().isEmpty()) {
            return Optional.empty();
        }
        return Planner.impossible(job.plan().assembly().piece(), with(job, name, size), quick(store)).stream()
                .findFirst()
                .map(problem -> new Refused(
                        Refused.BAD,
                        "%s cannot be %s. %s".formatted(name, size, problem.message()),
                        "Nothing was written down. Measure again; is the unit right?"));
    }

    private static BenchLog with(JobPlan.Planned job, String name, Length size) {
        List<BenchLog.Measured> measured = new ArrayList<>(job.bench().measured());
        measured.removeIf(each -> each.path().equals(name));
        measured.add(new BenchLog.Measured(name, size, NOWHERE));
        return new BenchLog(measured, job.bench().cut(), job.bench().sawn());
    }

    /** Of a piece with a bench log, in the shop as it is. */
    static Plan plan(ShopStore store, Piece piece, BenchLog bench) {
        return Planner.plan(piece, bench, quick(store)).plan();
    }

    /** Only what would be said of a piece as it is drawn and measured. */
    static List<Finding> standing(ShopStore store, Piece piece, BenchLog bench) {
        return Planner.standing(piece, bench, quick(store));
    }

    private static Shop quick(ShopStore store) {
        Shop shop = store.settings().shop(store.rack());
        return new Shop(
                shop.tolerances(), shop.allowances(), shop.rack(), new Effort(0, 1), shop.hardware(), shop.joints());
    }
}
