package scantling.route.days;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import scantling.construct.Finding;
import scantling.measure.Length;
import scantling.piece.Workshop;
import scantling.route.Operation;
import scantling.route.schedule.Capacity;
import scantling.route.schedule.Use;

/**
 * What a shop has only so much of, as capacities. Clamps are counted from each length up: a long one serves where a short
 * one would, so all that want a length or more may not take more than there are of that length or more.
 */
final class Places {
    private static final double DECIMETRES = 100;

    private final Workshop workshop;
    private final List<Capacity> capacities = new ArrayList<>();
    private final List<Length> clampLengths;
    private int bench = -1;
    private int spray = -1;
    private int drying = -1;
    private int room = -1;
    private final boolean usual;
    private final Map<String, Double> crowded = new LinkedHashMap<>();
    private int clamps = -1;

    Places(Workshop workshop) {
        this.workshop = workshop;
        capacities.add(new Capacity("hands", workshop.hands(), Capacity.Axis.WORKED));
        if (workshop.benches().isPresent()) {
            bench = add("bench places", workshop.benches().getAsInt());
        }
        if (workshop.spray().isPresent()) {
            spray = add("places to spray", workshop.spray().getAsInt());
        }
        if (workshop.drying().isPresent()) {
            drying = add("places to dry", workshop.drying().getAsInt());
        }
        usual = workshop.drying().isEmpty() && workshop.dryingRoom().isEmpty();
        if (usual || workshop.dryingRoom().isPresent()) {
            room = add("square decimetres to dry on", (int) Math.floor(square() * DECIMETRES));
        }
        clampLengths = List.copyOf(workshop.clamps().keySet());
        for (Length length : clampLengths) {
            int there = workshop.clamps().entrySet().stream()
                    .filter(entry -> entry.getKey().compareTo(length) >= 0)
                    .mapToInt(Map.Entry::getValue)
                    .sum();
            int index = add("clamps of %s and longer".formatted(length), there);
            clamps = clamps < 0 ? index : clamps;
        }
    }

    /** Square metres to dry on: the shop's own, else the usual ones. */
    private double square() {
        return workshop.dryingRoom().orElse(UsualHours.dryingRoom());
    }

    private int add(String name, int amount) {
        capacities.add(new Capacity(name, amount, Capacity.Axis.CLOCK));
        return capacities.size() - 1;
    }

    Workshop workshop() {
        return workshop;
    }

    List<Capacity> capacities() {
        return capacities;
    }

    /** What the work takes up; more than there is, is taken as all there is, and said. */
    List<Use> uses(String job, Operation operation, List<Finding> findings) {
        List<Use> uses = new ArrayList<>(List.of(Use.during(0, 1)));
        uses.addAll(taken(job, operation, findings, true));
        return uses;
    }

    /** What is still taken up when only the glue has to set or a coat to dry. */
    List<Use> held(String job, Operation operation, List<Finding> findings) {
        return taken(job, operation, findings, false);
    }

    private List<Use> taken(String job, Operation operation, List<Finding> findings, boolean working) {
        List<Use> uses = new ArrayList<>();
        boolean holds = operation.needs().holdHours() > 0;
        if (bench >= 0 && operation.needs().bench() && (working || holds)) {
            uses.add(new Use(bench, 1, working, holds));
        }
        if (spray >= 0 && operation.needs().spray() && working) {
            some(spray, 1, job, operation, findings).ifPresent(amount -> uses.add(Use.during(spray, amount)));
        }
        if (drying >= 0 && operation.needs().drying() > 0 && holds) {
            some(drying, operation.needs().drying(), job, operation, findings)
                    .ifPresent(amount -> uses.add(Use.after(drying, amount)));
        }
        if (room >= 0 && operation.needs().dryingRoom() > 0 && holds) {
            room(job, operation).ifPresent(amount -> uses.add(Use.after(room, amount)));
        }
        clamps(job, operation, findings, working, uses);
        return uses;
    }

    /** All there is where it is not enough: then the coat goes on in several goes, which is said once for each job. */
    private OptionalInt room(String job, Operation operation) {
        double wanted = operation.needs().dryingRoom();
        if (wanted > square()) {
            crowded.merge(job, wanted, Math::max);
        }
        int amount = Math.min(
                (int) Math.ceil(wanted * DECIMETRES), capacities.get(room).amount());
        return amount > 0 ? OptionalInt.of(amount) : OptionalInt.empty();
    }

    /** Jobs whose coats want more room to dry than there is. */
    List<Finding> crowded() {
        return crowded.entrySet().stream()
                .map(entry -> new Finding(
                        usual ? Finding.Severity.NOTE : Finding.Severity.CAUTION,
                        entry.getKey(),
                        String.format(
                                Locale.ROOT,
                                "Its largest coat wants %.1f m2 to dry on; %s has %.1f.",
                                entry.getValue(),
                                usual ? "a usual shop" : "the shop",
                                square()),
                        List.of(),
                        usual ? UsualHours.dryingSource() : "the shop's own list",
                        usual
                                ? "Say drying room: 8 m2 among your hours, all shelves together; or coat in several"
                                        + " goes."
                                : "Coat in several goes, or set up more shelves."))
                .toList();
    }

    private void clamps(String job, Operation operation, List<Finding> findings, boolean working, List<Use> uses) {
        int wanted = operation.needs().clamps();
        if (wanted == 0) {
            return;
        }
        int longEnough = 0;
        while (longEnough < clampLengths.size()
                && clampLengths.get(longEnough).compareTo(operation.needs().clampLength()) < 0) {
            longEnough++;
        }
        if (!clampLengths.isEmpty() && longEnough == clampLengths.size()) {
            findings.add(lacking(
                    job, operation, "no clamp of %s".formatted(operation.needs().clampLength())));
            longEnough--;
        }
        for (int k = 0; k <= longEnough && k < clampLengths.size(); k++) {
            int index = clamps + k;
            List<Finding> told = k == longEnough ? findings : new ArrayList<>();
            some(index, wanted, job, operation, told)
                    .ifPresent(amount -> uses.add(new Use(index, amount, working, true)));
        }
    }

    private OptionalInt some(int index, int wanted, String job, Operation operation, List<Finding> findings) {
        Capacity capacity = capacities.get(index);
        if (wanted > capacity.amount()) {
            findings.add(lacking(
                    job, operation, "%d of its %s, not %d".formatted(capacity.amount(), capacity.name(), wanted)));
        }
        int amount = Math.min(wanted, capacity.amount());
        return amount > 0 ? OptionalInt.of(amount) : OptionalInt.empty();
    }

    private static Finding lacking(String job, Operation operation, String what) {
        return new Finding(
                Finding.Severity.CAUTION,
                job,
                "%s: the shop has %s.".formatted(operation.title(), what),
                List.of(),
                "the shop's own list",
                "Borrow what is missing, glue in smaller goes, or correct the list of the shop.");
    }
}
