package scantling.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.route.Consumable;
import scantling.route.Operation;
import scantling.route.Route;

/** A route in lines of text. */
final class RouteText {
    private static final int MINUTES = 60;
    private static final int NAMED = 4;

    private final Route route;
    private final boolean all;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    /** @param all whether every part is named, or only the first of many */
    RouteText(Route route, boolean all) {
        this.route = route;
        this.all = all;
        route.operations().forEach(operation -> numbers.put(operation.id(), numbers.size() + 1));
    }

    void print(PrintWriter out) {
        route.operations().forEach(operation -> tell(operation, out));
        out.println();
        hours(out);
        used(out);
        mind(out);
        route.order().findings().forEach(finding -> out.println(DayText.finding(finding)));
    }

    private void tell(Operation operation, PrintWriter out) {
        out.println("%3d  %s".formatted(numbers.getOrDefault(operation.id(), 0), operation.title()));
        out.println("     %s%s%s%s"
                .formatted(
                        hands(operation),
                        count(operation.parts().size(), "part"),
                        ready(operation),
                        operation.pause().hours() > 0 ? "; then %s".formatted(pause(operation)) : ""));
        Stream.of(names(operation.parts()), String.join("; ", operation.settings()), supplies(operation))
                .filter(words -> !words.isEmpty())
                .forEach(words -> out.println("     " + words));
    }

    private String names(List<String> parts) {
        int more = parts.size() - NAMED;
        return all || more <= 1
                ? String.join(", ", parts)
                : "%s and %d more".formatted(String.join(", ", parts.subList(0, NAMED)), more);
    }

    private void hours(PrintWriter out) {
        route.byTrade()
                .forEach((trade, minutes) -> out.println("%-18s %5.1f h (%.1f to %.1f)"
                        .formatted(
                                trade.words(),
                                minutes.likely() / MINUTES,
                                minutes.low() / MINUTES,
                                minutes.high() / MINUTES)));
        int logged =
                route.operations().stream().mapToInt(Operation::observations).sum();
        out.println("Hands-on %.0f h (%.0f to %.0f). %s"
                .formatted(
                        route.hands().likely() / MINUTES,
                        route.hands().low() / MINUTES,
                        route.hands().high() / MINUTES,
                        logged == 0
                                ? "Minutes are common practice until your own log says more."
                                : "Where your log has times, their number stands behind the minutes."));
    }

    private void used(PrintWriter out) {
        out.println();
        out.println("To have, besides wood, hardware and finish");
        for (Consumable used : Consumable.of(route)) {
            String packs = used.packs().stream().map("%.0f"::formatted).collect(Collectors.joining(" + "));
            out.println("  %s: %s%s"
                    .formatted(
                            used.name(),
                            amount(used.amount(), used.unit()),
                            packs.isEmpty() ? "" : ", buy %s %s".formatted(packs, used.unit())));
        }
    }

    private void mind(PrintWriter out) {
        Set<String> told = new LinkedHashSet<>();
        for (Operation operation : route.operations()) {
            operation
                    .cautions()
                    .forEach(caution -> told.add(
                            "  %s: %s (%s)".formatted(operation.step().words(), caution.sentence(), caution.source())));
        }
        out.println();
        out.println("Mind");
        told.forEach(out::println);
    }

    private String ready(Operation operation) {
        String before = operation.after().stream()
                .map(id -> numbers.getOrDefault(id, 0))
                .sorted()
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        return before.isEmpty() ? "" : ", ready first: " + before;
    }

    private static String supplies(Operation operation) {
        return operation.supplies().stream()
                .map(supply -> "%s %s".formatted(supply.name(), amount(supply.amount(), supply.unit())))
                .collect(Collectors.joining("; "));
    }

    private static String amount(double amount, String unit) {
        boolean whole = amount == Math.rint(amount);
        return (whole ? "%.0f %s" : "%.1f %s").formatted(amount, unit);
    }

    private static String hands(Operation operation) {
        String behind = operation.observations() == 0 ? "" : ", %d logged".formatted(operation.observations());
        return "%.0f min (%.0f to %.0f%s), "
                .formatted(
                        operation.hands().likely(),
                        operation.hands().low(),
                        operation.hands().high(),
                        behind);
    }

    private static String pause(Operation operation) {
        double hours = operation.pause().hours();
        String least = hours < 1 ? "%.0f min".formatted(hours * MINUTES) : "%.0f h".formatted(hours);
        String closes = operation.pause().closes().isPresent()
                ? " and no more than %.0f h"
                        .formatted(operation.pause().closes().getAsDouble())
                : "";
        return "%s%s: %s".formatted(least, closes, operation.pause().why());
    }

    static String count(int number, String what) {
        return number == 1 ? "1 " + what : number + " " + what + "s";
    }
}
