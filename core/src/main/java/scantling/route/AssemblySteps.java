package scantling.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Pattern;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.route.glue.Glue;
import scantling.route.glue.GlueOrder;
import scantling.route.glue.Session;

/** From parts with their joints to a piece that fits together. */
final class AssemblySteps {
    private static final List<Double> GRITS =
            List.of(Times.figure("first grit before glue"), Times.figure("last grit before glue"));
    private static final String LIPPING = "lipping";
    private static final Pattern STEP = Pattern.compile(", step \\d+");
    private static final Pattern WHERE = Pattern.compile("\\b(left|right|front|back|near|far)\\b|\\d+");
    private static final Pattern BLANK = Pattern.compile("\\s+");

    private final Draft draft;
    private final RouteInput input;
    private final Assembly assembly;
    private final List<LateJoint> late;
    private final Glue glue;
    private final GlueOrder order;
    private final Fixings fixings;
    private final LengthFormat format;
    private final Map<String, Part> parts = new LinkedHashMap<>();

    AssemblySteps(Draft draft, RouteInput input, GlueOrder order) {
        this.draft = draft;
        this.input = input;
        assembly = input.assembly();
        late = LateJoint.all(input);
        glue = input.glue();
        this.order = order;
        fixings = new Fixings(input);
        format = LengthFormat.of(assembly.piece().unit());
        assembly.parts().forEach(part -> parts.put(part.path(), part));
    }

    void write() {
        Map<String, List<Session>> bodies = bodies();
        bodies.forEach((name, alike) -> draft.entry(Step.DRY_FIT, name, partsOf(alike))
                .takes("dry fit", alike.stream().mapToInt(AssemblySteps::joints).sum())
                .needs(Needs.BENCH)
                .add());
        bodies.forEach((name, alike) -> sand(name, partsOf(alike)));
        LastSteps.finish(draft, input, true, order);
        for (Session session : order.sessions()) {
            glueUp(session);
            late.forEach(joints -> joints.write(draft, session.parts()));
        }
        bodies.forEach((name, alike) -> draft.entry(Step.CLEAN_UP, name, partsOf(alike))
                .takes(
                        "clean up",
                        alike.stream().mapToInt(AssemblySteps::joints).sum())
                .needs(Needs.BENCH)
                .then(Pause.of("glue before planing flush"))
                .add());
        flush();
        openings();
    }

    private void sand(String name, List<String> paths) {
        double square = square(paths);
        draft.entry(Step.SAND_BEFORE, name, paths)
                .takes("sand before glue", GRITS.size() * square)
                .set(GRITS.stream().map("%.0f grit"::formatted).toList())
                .uses(GRITS.stream()
                        .map(grit -> Supply.discs("bare wood", "%.0f".formatted(grit), square))
                        .toList())
                .needs(Needs.BENCH)
                .add();
    }

    static Supply spread(Glue glue, double square) {
        double grams = square * (glue.spreadLow() + glue.spreadHigh()) / 2;
        return new Supply(glue.name() + " glue", grams, "g", glue.source());
    }

    static Pause beforeMachining(Glue glue) {
        return new Pause(
                glue.machineHours(), OptionalDouble.empty(), "the glue sets before the joint is planed", glue.source());
    }

    private static int joints(Session session) {
        return session.closings().stream()
                .mapToInt(closing -> closing.joints().size())
                .sum();
    }

    /** What is one thing when all glue has set, gathered by what is alike: left and right end, all drawer boxes. */
    private Map<String, List<Session>> bodies() {
        Map<String, List<Session>> bodies = new LinkedHashMap<>();
        for (Session session : order.sessions()) {
            boolean whole = order.sessions().stream()
                    .noneMatch(other -> other != session
                            && other.parts().size() > session.parts().size()
                            && other.parts().containsAll(session.parts()));
            if (whole) {
                bodies.computeIfAbsent(alike(session.name()), k -> new ArrayList<>())
                        .add(session);
            }
        }
        return bodies;
    }

    /** The last two words of a path without sides and numbers. */
    static String alike(String name) {
        String[] words = STEP.matcher(name).replaceAll("").split(Ledger.SEPARATOR);
        int from = Math.max(0, words.length - 2);
        List<String> kept = new ArrayList<>();
        for (int k = from; k < words.length; k++) {
            String plain = WHERE.matcher(words[k]).replaceAll("");
            kept.add(BLANK.matcher(plain).replaceAll(" ").strip());
        }
        kept.removeIf(String::isEmpty);
        return kept.isEmpty() ? words[words.length - 1] : String.join(Ledger.SEPARATOR, kept);
    }

    private static List<String> partsOf(Collection<Session> sessions) {
        TreeSet<String> all = new TreeSet<>();
        sessions.forEach(session -> all.addAll(session.parts()));
        return List.copyOf(all);
    }

    private double square(List<String> paths) {
        return paths.stream().mapToDouble(path -> CoatStep.square(part(path))).sum();
    }

    private void glueUp(Session session) {
        double hours = glue.clampMinutes() / 60;
        List<String> how = new ArrayList<>();
        how.add("%d clamps, %s and longer".formatted(session.clamps(), format.formatWithUnit(session.clampLength())));
        how.add("open %.0f min; %.0f of %.0f min to the last clamp"
                .formatted(glue.openMinutes(), session.minutes(), glue.assemblyMinutes()));
        if (session.cauls()) {
            how.add("stiff cauls under the clamps");
        }
        draft.entry(Step.GLUE_UP, session.name(), session.parts())
                .takes("glue-up", Math.max(1, session.glued().size()))
                .set(session.isGlueUp() ? how : List.of("dry"))
                .uses(fixings.of(List.of(session)))
                .uses(spread(glue, session.square()))
                .needs(session.isGlueUp() ? Needs.gluing(session.clamps(), session.clampLength(), hours) : Needs.BENCH)
                .then(new Pause(session.isGlueUp() ? hours : 0, OptionalDouble.empty(), "in clamps", glue.source()))
                .add();
    }

    private Part part(String path) {
        return Objects.requireNonNull(parts.get(path), path);
    }

    private void flush() {
        Map<String, List<String>> tops = new LinkedHashMap<>();
        double metres = 0;
        for (Joint joint : assembly.joints()) {
            // Two lippings meet in a mitre; what is planed flush is a lipping on its core, however it is joined.
            if (joint.entering().contains(LIPPING) && !joint.receiving().contains(LIPPING)) {
                tops.computeIfAbsent(LIPPING, k -> new ArrayList<>())
                        .addAll(List.of(joint.entering(), joint.receiving()));
                metres += part(joint.entering()).length().value().toMetres();
            }
        }
        double length = metres;
        tops.forEach((name, both) -> draft.entry(Step.FLUSH, name, both)
                .takes("flush lipping", length)
                .needs(Needs.BENCH)
                .add());
    }

    private void openings() {
        Map<String, List<Opening>> kinds = new LinkedHashMap<>();
        for (Opening opening : assembly.openings()) {
            if (!opening.fills().isEmpty()) {
                String said = opening.path() + opening.fills();
                String kind = said.contains("drawer") ? "drawer" : said.contains("door") ? "door" : "panel";
                kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(opening);
            }
        }
        kinds.forEach((kind, alike) -> draft.entry(
                        Step.FIT,
                        kind + "s to their openings as measured",
                        alike.stream()
                                .flatMap(opening -> opening.fills().stream())
                                .toList())
                .takes("fit " + kind, alike.size())
                .needs(Needs.BENCH)
                .add());
    }
}
