package scantling.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import scantling.measure.LengthFormat;
import scantling.plan.Plan;
import scantling.route.glue.Closing;
import scantling.route.glue.Session;

/** Tells everything that is done to a piece, in order. */
@Command(
        name = "route",
        mixinStandardHelpOptions = true,
        description =
                "Tell everything you do to build a piece, in order: minutes, pauses, clamps, what must be ready first.")
final class RouteCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PieceOption piece = new PieceOption();

    @Option(names = "--gluing", description = "Only the order of glue-up, part by part.")
    private boolean gluing;

    @Option(names = "--parts", description = "Name every part of every operation.")
    private boolean parts;

    @Override
    public Integer call() {
        Plan plan = piece.plan();
        PrintWriter out = spec.commandLine().getOut();
        if (gluing) {
            LengthFormat format = LengthFormat.of(plan.assembly().piece().unit());
            plan.route().order().sessions().forEach(session -> tell(session, format, out));
            plan.route().order().fastened().forEach(session -> tell(session, format, out));
        } else {
            new RouteText(plan.route(), parts).print(out);
        }
        return plan.hasStop() ? Exit.STOP : Exit.WELL;
    }

    private static void tell(Session session, LengthFormat format, PrintWriter out) {
        out.println(
                session.isGlueUp()
                        ? "Glue %s: %s, %s of %s and longer, %.0f min to the last clamp"
                                .formatted(
                                        session.name(),
                                        RouteText.count(session.glued().size(), "joint"),
                                        RouteText.count(session.clamps(), "clamp"),
                                        format.formatWithUnit(session.clampLength()),
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
