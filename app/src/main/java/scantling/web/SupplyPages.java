package scantling.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import scantling.construct.Fitting;
import scantling.shop.Act;
import scantling.shop.JobPlan;
import scantling.shop.Supply;

/** Hardware and finish on hand: how much of each, what it cost and where it is. What lies here is not bought again. */
public final class SupplyPages {
    private static final int WORDS = 80;
    private static final int AMOUNT = 16;

    private final Doorway doorway;

    SupplyPages(Doorway doorway) {
        this.doorway = doorway;
    }

    void open(RoutesConfig routes) {
        routes.get("/onhand", this::show);
        routes.post("/onhand", this::put);
        routes.post("/onhand/off", this::off);
    }

    /**
     * What is on hand of one kind.
     *
     * @param kind its word in the store
     * @param title for people
     * @param lines each supply
     */
    public record Group(String kind, String title, List<Line> lines) {}

    /** A supply as a form shows it. */
    public record Line(String id, String name, String amount, String unit, String price, String place) {
        static Line of(Supply supply) {
            return new Line(
                    supply.id(),
                    supply.name(),
                    supply.amount().stripTrailingZeros().toPlainString(),
                    supply.unit(),
                    Prices.written(supply.price()),
                    supply.place());
        }
    }

    private void show(Context ctx) {
        List<Supply> all = doorway.store().supplies();
        Map<String, Object> values = new HashMap<>();
        values.put("chrome", doorway.chrome(ctx, "Hardware and finish"));
        values.put(
                "groups",
                List.of(
                        group("hardware", "Hardware", all, Supply.Kind.HARDWARE),
                        group("finish", "Finish", all, Supply.Kind.FINISH)));
        values.put("wanted", List.copyOf(wanted()));
        values.put("lately", ShopActs.lately(doorway));
        doorway.show(ctx, "onhand", values);
    }

    private static Group group(String kind, String title, List<Supply> all, Supply.Kind of) {
        return new Group(
                kind,
                title,
                all.stream().filter(each -> each.kind() == of).map(Line::of).toList());
    }

    /** What the jobs in hand call what they need: named the same, it is found on hand. */
    private TreeSet<String> wanted() {
        TreeSet<String> names = new TreeSet<>();
        HomePages.inHand(doorway.store().jobs()).stream()
                .flatMap(job -> doorway.store().jobBook().planOf(job.id()).stream())
                .filter(JobPlan.Planned.class::isInstance)
                .map(job -> ((JobPlan.Planned) job).plan())
                .forEach(plan -> {
                    plan.assembly().fittings().stream().map(Fitting::what).forEach(names::add);
                    plan.finish().buy().forEach(buy -> names.add(buy.coat().name()));
                });
        return names;
    }

    private void put(Context ctx) {
        Supply.Kind kind =
                Requests.field(ctx, "kind", WORDS).equals("finish") ? Supply.Kind.FINISH : Supply.Kind.HARDWARE;
        String name = Requests.field(ctx, "name", WORDS).strip();
        if (name.isEmpty()) {
            throw new Refused(Refused.BAD, "It needs a name.", "Write what it is: concealed undermount slide 350.");
        }
        doorway.mustTake(
                ctx,
                new Act.PutSupply(new Supply(
                        Requests.field(ctx, "id", Requests.LINE),
                        kind,
                        name,
                        amount(ctx),
                        Requests.field(ctx, "unit", WORDS).strip(),
                        Prices.read(ctx, "price"),
                        Requests.field(ctx, "place", WORDS).strip())));
        ctx.redirect("/onhand", HttpStatus.SEE_OTHER);
    }

    private static BigDecimal amount(Context ctx) {
        String said = Requests.field(ctx, "amount", AMOUNT).strip().replace(',', '.');
        if (!said.matches("\\d{1,9}(\\.\\d{1,6})?")) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s\" is no amount.".formatted(Requests.shown(said)),
                    "Write how many or how much there is: 4, or 0.75.");
        }
        return new BigDecimal(said);
    }

    private void off(Context ctx) {
        doorway.mustTake(ctx, new Act.TakeSupply(Requests.field(ctx, "id", Requests.LINE)));
        ctx.redirect("/onhand", HttpStatus.SEE_OTHER);
    }
}
