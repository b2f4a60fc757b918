package scantling.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import scantling.finishing.Amount;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.piece.Workshop;
import scantling.pricing.Basis;
import scantling.pricing.Work;
import scantling.route.Route;
import scantling.route.days.Agenda;
import scantling.route.days.Agendas;
import scantling.route.days.JobInHand;
import scantling.route.schedule.Effort;
import scantling.stock.RoughClass;

/** Puts together what a price rests on. */
public final class Costing {
    /** Any Monday in winter: no clock is changed near it. */
    private static final LocalDate MONDAY = LocalDate.of(2001, 1, 8);

    private static final double HOURS_A_DAY = 24;
    /** Three standard deviations over the 1.2816 that a mark is off. */
    private static final double HARDLY = 3 / 1.2816;

    private Costing() {}

    /** What a price of a plan rests on, hours from its route. @param shop it was planned for */
    public static Basis basis(Plan plan, Shop shop) {
        return basis(plan, shop, work(plan.route()));
    }

    /** Days by the calendar of the shop, begun on a Monday morning with nothing else in hand, by the first sound order. */
    private static OptionalDouble days(Route route, Workshop calendar) {
        if (route.operations().isEmpty()) {
            return OptionalDouble.empty();
        }
        Instant monday = MONDAY.atStartOfDay(calendar.zone()).toInstant();
        JobInHand alone = new JobInHand("alone", route, Optional.empty(), 1, Map.of(), Map.of());
        try {
            Agenda agenda = Agendas.plan(calendar, List.of(alone), monday, Effort.FIRST, 0);
            Instant from = agenda.entries().get(0).from().toInstant();
            Instant to = agenda.promises().get(0).planned().toInstant();
            return OptionalDouble.of(Duration.between(from, to).toHours() / HOURS_A_DAY);
        } catch (IllegalArgumentException hardlyEverWorks) {
            return OptionalDouble.empty();
        }
    }

    /**
     * Hands-on minutes of a route by class of operation. The marks of a route are passed one time in ten; bounds of an
     * estimate hardly ever: three standard deviations off, as a three-point estimate has it.
     */
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
        return new Basis(
                plan.assembly(),
                plan.features(),
                sawn,
                plan.finish(),
                work,
                days(plan.route(), shop.office().calendar()));
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
