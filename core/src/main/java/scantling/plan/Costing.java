package scantling.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.finishing.Amount;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.pricing.Basis;
import scantling.pricing.Work;
import scantling.route.Route;
import scantling.stock.RoughClass;

/** Puts together what a price rests on. */
public final class Costing {
    private Costing() {}

    /** What a price of a plan rests on, hours from its route. @param shop it was planned for */
    public static Basis basis(Plan plan, Shop shop) {
        return basis(plan, shop, work(plan.route()));
    }

    /** Hands-on minutes of a route by class of operation. */
    public static Work work(Route route) {
        List<Work.Hours> hours = new ArrayList<>();
        route.byTrade()
                .forEach((trade, minutes) -> hours.add(new Work.Hours(
                        trade.words(),
                        new Amount(minutes.low(), minutes.likely(), minutes.high()),
                        trade.atMachine())));
        return new Work(hours, "the route");
    }

    /** What a price of a plan rests on. @param shop it was planned for @param work hours by class; {@link Work#NONE} when nobody knows */
    public static Basis basis(Plan plan, Shop shop, Work work) {
        Length ends = shop.allowances().endTrim().value().times(2);
        List<Basis.Sawn> sawn = plan.cuts().stream()
                .map(group -> new Basis.Sawn(group.title(), group.material(), group.plan(), rough(plan, group), ends))
                .toList();
        return new Basis(plan.assembly(), plan.features(), sawn, plan.finish(), work);
    }

    /** The class of its boards: that of the blanks it cuts. */
    private static Optional<RoughClass> rough(Plan plan, CutGroup group) {
        return group.job().parts().stream()
                .flatMap(part ->
                        plan.blanks().stream().filter(blank -> blank.part().equals(part.name())))
                .flatMap((Blank blank) -> blank.roughClass().stream())
                .findFirst();
    }
}
