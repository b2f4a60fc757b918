package scantling.plan;

import java.util.List;
import java.util.Optional;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.pricing.Basis;
import scantling.pricing.Work;
import scantling.stock.RoughClass;

/** Puts together what a price rests on. */
public final class Costing {
    private Costing() {}

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
