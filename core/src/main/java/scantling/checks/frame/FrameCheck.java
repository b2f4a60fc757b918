package scantling.checks.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.checks.lasting.Parts;
import scantling.checks.lasting.Say;
import scantling.checks.lasting.Woods;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.feature.Features;
import scantling.measure.Dim;
import scantling.measure.Length;

/** What is wrong with a piece as a frame: joints loaded beyond what such joints held, too much sway, no frame at all. */
public final class FrameCheck {
    private static final String METHOD =
            "frame of bars, links and sheets solved by sparse Cholesky, docs/method/frame.md";

    private final Assembly assembly;
    private final Say say;

    private FrameCheck(Assembly assembly) {
        this.assembly = assembly;
        this.say = Say.of(assembly);
    }

    /** What is to be said; nothing when the piece stands up to every load. */
    public static List<Finding> check(Assembly assembly) {
        return check(assembly, Features.NONE);
    }

    /** The same with what joinery has cut. */
    public static List<Finding> check(Assembly assembly, Features features) {
        return Frames.of(assembly, features)
                .map(framing -> check(assembly, framing))
                .orElse(List.of());
    }

    /** The same for a frame that is solved already. */
    public static List<Finding> check(Assembly assembly, Framing framing) {
        FrameCheck check = new FrameCheck(assembly);
        List<Finding> findings = new ArrayList<>();
        if (!framing.unknown().isEmpty()) {
            findings.add(check.unknown(framing.unknown()));
        }
        framing.loose().map(check::loose).ifPresent(findings::add);
        framing.cases().stream()
                .filter(each -> each.worst().filter(worst -> worst.ratio() > 1).isPresent())
                .max(Comparator.comparingDouble(
                        each -> each.worst().orElseThrow().ratio()))
                .map(each -> check.overloaded(each, each.worst().orElseThrow()))
                .ifPresent(findings::add);
        check.sway(framing).ifPresent(findings::add);
        framing.square().flatMap(check::back).ifPresent(findings::add);
        return findings;
    }

    private Finding unknown(List<String> paths) {
        String offer = Parts.find(assembly, paths.get(0))
                .map(part -> Woods.standard().offer(part, Woods.Known.STIFFNESS))
                .orElse("Name a wood or sheet like it that the tables know.");
        return new Finding(
                        Finding.Severity.NOTE,
                        paths.get(0),
                        "How stiff %s is, is in no table; the frame was not judged.".formatted(paths.get(0)),
                        List.of(),
                        "the timber tables",
                        offer)
                .by("frame");
    }

    private Finding loose(Framing.Loose loose) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        loose.part(),
                        "The frame is a mechanism: %s moves %s, and no joint or sheet holds it."
                                .formatted(loose.part(), loose.direction()),
                        List.of(),
                        METHOD,
                        "Join it, brace it with a sheet, or say which joint holds it.")
                .by("frame");
    }

    private Finding overloaded(Framing.Case on, Framing.Loaded worst) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        worst.joint(),
                        "Under %s this joint takes %s N m (%s lb in), %s times the %s N m that such joints held in tests."
                                .formatted(
                                        on.load().words(),
                                        Say.one(worst.moment()),
                                        Math.round(worst.moment() * 8.8507458),
                                        Say.one(worst.ratio()),
                                        Say.one(worst.bears())),
                        List.of(),
                        "load: %s; joint: %s; %s".formatted(on.load().source(), worst.source(), METHOD),
                        "A wider rail, a longer tenon or a further rail below takes the moment down.")
                .by("strength");
    }

    private Optional<Finding> sway(Framing framing) {
        return framing.cases().stream()
                .filter(each -> !each.load().direction().equals("down"))
                .filter(each -> each.most() > height(framing) / Numbers.of("sway limit"))
                .max(Comparator.comparingDouble(Framing.Case::most))
                .map(each -> new Finding(
                                Finding.Severity.NOTE,
                                assembly.piece().title(),
                                "Under %s it gives %s (at %s), more than its height over %.0f: it will feel loose."
                                        .formatted(
                                                each.load().words(),
                                                say.near(each.most()),
                                                each.where(),
                                                Numbers.of("sway limit")),
                                List.of(moves(each.most())),
                                "load: %s; limit: %s; %s"
                                        .formatted(each.load().source(), Numbers.sourceOf("sway limit"), METHOD),
                                "Widen the rails, add a stretcher, or let in a back.")
                        .by("sway"));
    }

    private static double height(Framing framing) {
        double low = framing.lines().stream()
                .mapToDouble(line -> Math.min(line.from().up(), line.to().up()))
                .min()
                .orElse(0);
        double high = framing.lines().stream()
                .mapToDouble(line -> Math.max(line.from().up(), line.to().up()))
                .max()
                .orElse(0);
        return high - low;
    }

    private static Dim moves(double mm) {
        return Dim.worked(Length.ofMillimetres(mm), "movement of the frame, docs/method/frame.md");
    }

    /** Only where the back makes the difference between standing square and not. */
    private Optional<Finding> back(Framing.Square square) {
        double limit = square.height() / Numbers.of("sway limit");
        if (square.with() > limit || square.without() <= limit) {
            return Optional.empty();
        }
        String bare = square.without() > square.height()
                ? "folds up without it"
                : "would give %s without it".formatted(say.near(square.without()));
        return Optional.of(new Finding(
                        Finding.Severity.NOTE,
                        square.back(),
                        "The back keeps it square: under %s it gives %s, and %s."
                                .formatted(square.load().words(), say.near(square.with()), bare),
                        List.of(moves(square.with())),
                        "load: %s; %s".formatted(square.load().source(), METHOD),
                        "Fasten the back all round before the piece is moved or loaded.")
                .by("square"));
    }
}
