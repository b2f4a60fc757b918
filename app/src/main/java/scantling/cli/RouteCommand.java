package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.Route;
import scantling.route.glue.Closing;
import scantling.route.glue.Session;

/** Tells everything that is done to a piece, in order. */
@Command(
        name = "route",
        mixinStandardHelpOptions = true,
        description =
                "Tell everything you do to build a piece, in order: minutes, pauses, clamps, what must be ready first.")
final class RouteCommand implements Callable<Integer> {
    private static final int MINUTES = 60;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The text of the piece.")
    private Path file = Path.of("");

    @Option(
            names = "--measured",
            paramLabel = "FILE",
            description = "What the bench says: measured sizes and parts cut.")
    private Optional<Path> measured = Optional.empty();

    @Option(names = "--gluing", description = "Only the order of glue-up, part by part.")
    private boolean gluing;

    @Mixin
    private SettingsOption settings = new SettingsOption();

    @Override
    public Integer call() {
        Plan plan = Workbench.plan(file, measured, settings.shop());
        PrintWriter out = spec.commandLine().getOut();
        if (gluing) {
            plan.route().order().sessions().forEach(session -> tell(session, out));
            plan.route().order().fastened().forEach(session -> tell(session, out));
        } else {
            tell(plan.route(), out);
        }
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }

    private static void tell(Route route, PrintWriter out) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        route.operations().forEach(operation -> numbers.put(operation.id(), numbers.size() + 1));
        for (Operation operation : route.operations()) {
            out.println("%3d  %s".formatted(numbers.getOrDefault(operation.id(), 0), operation.title()));
            out.println("     %s%s%s%s"
                    .formatted(
                            hands(operation),
                            count(operation.parts().size(), "part"),
                            ready(operation, numbers),
                            operation.pause().hours() > 0 ? "; then %s".formatted(pause(operation)) : ""));
            Stream.of(String.join("; ", operation.settings()), supplies(operation))
                    .filter(words -> !words.isEmpty())
                    .forEach(words -> out.println("     " + words));
        }
        out.println();
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
        route.order().findings().forEach(finding -> out.println(DayText.finding(finding)));
    }

    private static String ready(Operation operation, Map<String, Integer> numbers) {
        String before = operation.after().stream()
                .map(id -> numbers.getOrDefault(id, 0))
                .sorted()
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        return before.isEmpty() ? "" : ", ready first: " + before;
    }

    private static String supplies(Operation operation) {
        return operation.supplies().stream()
                .map(supply -> "%s %.1f %s".formatted(supply.name(), supply.amount(), supply.unit()))
                .collect(Collectors.joining("; "));
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

    private static String count(int number, String what) {
        return number == 1 ? "1 " + what : number + " " + what + "s";
    }

    private static void tell(Session session, PrintWriter out) {
        out.println(
                session.isGlueUp()
                        ? "Glue %s: %s, %s of %s and longer, %.0f min to the last clamp"
                                .formatted(
                                        session.name(),
                                        count(session.glued().size(), "joint"),
                                        count(session.clamps(), "clamp"),
                                        session.clampLength(),
                                        session.minutes())
                        : "Put together %s, without glue".formatted(session.name()));
        for (Closing closing : session.closings()) {
            out.println("  %s, toward the %s"
                    .formatted(names(closing.parts()), closing.toward().word()));
        }
    }

    private static String names(List<String> parts) {
        return parts.size() <= 3
                ? String.join(" with ", parts)
                : "%s with %d others".formatted(parts.get(0), parts.size() - 1);
    }
}
