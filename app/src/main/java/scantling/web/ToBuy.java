package scantling.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.construct.Fitting;
import scantling.cutting.CutPiece;
import scantling.finishing.FinishPlan;
import scantling.plan.CutGroup;
import scantling.shop.JobPlan;
import scantling.shop.ShopStore;
import scantling.shop.Supply;
import scantling.web.HomeView.BuyLine;

/** What the jobs in hand need together and the shop has not: wood that is not in the rack, hardware and finish not on hand. */
final class ToBuy {
    private final Set<String> rack;
    private final List<Supply> supplies;
    private final Map<String, Need> needs = new LinkedHashMap<>();

    /** So much of something, for some jobs. */
    private static final class Need {
        private final Supply.Kind kind;
        private final String per;
        private final List<String> jobs = new ArrayList<>();
        private double amount;

        Need(Supply.Kind kind, String per) {
            this.kind = kind;
            this.per = per;
        }

        void more(double by, String job) {
            amount += by;
            if (!jobs.contains(job)) {
                jobs.add(job);
            }
        }
    }

    private ToBuy(ShopStore store) {
        this.rack = store.onHand().stream().map(piece -> piece.stock().id()).collect(Collectors.toSet());
        this.supplies = store.supplies();
    }

    static List<BuyLine> of(ShopStore store, List<JobPlan> jobs) {
        ToBuy all = new ToBuy(store);
        for (JobPlan job : jobs) {
            if (job instanceof JobPlan.Planned planned) {
                all.add(planned);
            }
        }
        return all.lines();
    }

    private void add(JobPlan.Planned job) {
        String title = job.job().title();
        job.plan().cuts().forEach(group -> wood(group, title));
        for (Fitting fitting : job.plan().assembly().fittings()) {
            need(Supply.Kind.HARDWARE, fitting.what(), fitting.per()).more(fitting.count(), title);
        }
        for (FinishPlan.Buy buy : job.plan().finish().buy()) {
            need(Supply.Kind.FINISH, buy.coat().name(), "l").more(buy.litres().high(), title);
        }
    }

    private void wood(CutGroup group, String job) {
        for (CutPiece piece : group.plan().used()) {
            if (!rack.contains(piece.stock().name())) {
                need(Supply.Kind.HARDWARE, group.title() + ": " + piece.stock().name(), "")
                        .more(1, job);
            }
        }
    }

    private Need need(Supply.Kind kind, String what, String per) {
        return needs.computeIfAbsent(what, name -> new Need(kind, per));
    }

    /** What is on hand under the very name counts; litres count for finish only. */
    private double onHand(String what, Need need) {
        return supplies.stream()
                .filter(supply ->
                        supply.kind() == need.kind && alike(supply.name()).equals(alike(what)))
                .filter(supply -> need.kind == Supply.Kind.HARDWARE
                        || supply.unit().toLowerCase(Locale.ROOT).startsWith("l"))
                .mapToDouble(supply -> supply.amount().doubleValue())
                .sum();
    }

    /** {@code Slide 350} is {@code slide 350.0 mm}. */
    private static String alike(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("(\\d)\\.0+(?!\\d)", "$1")
                .replaceAll("(\\d) mm\\b", "$1")
                .strip();
    }

    private List<BuyLine> lines() {
        List<BuyLine> lines = new ArrayList<>();
        needs.forEach((what, need) -> {
            double left = need.amount - onHand(what, need);
            if (left > 0) {
                lines.add(new BuyLine(what, written(left, need), String.join(", ", need.jobs)));
            }
        });
        return lines;
    }

    private static String written(double left, Need need) {
        if (need.kind == Supply.Kind.FINISH) {
            return String.format(Locale.ROOT, "%.2f l", left);
        }
        long count = (long) Math.ceil(left);
        return need.per.isEmpty() ? Long.toString(count) : count + " " + need.per + (count == 1 ? "" : "s");
    }
}
