package scantling.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.route.glue.GlueOrder;
import scantling.route.glue.Session;

/** From a piece that fits to one that stands at its client's. */
final class LastSteps {
    private static final List<String> HARDWARE = List.of("slide", "hinge", "handle", "shelf pin", "fastening");

    private final Draft draft;
    private final Assembly assembly;
    private final RouteInput input;
    private final GlueOrder order;
    private final List<String> all;
    private final Fixings fixings;

    LastSteps(Draft draft, RouteInput input, GlueOrder order) {
        this.draft = draft;
        assembly = input.assembly();
        this.input = input;
        this.order = order;
        fixings = new Fixings(input);
        all = assembly.parts().stream().map(Part::path).toList();
    }

    void write() {
        TreeSet<String> loose = new TreeSet<>();
        order.fastened().forEach(session -> loose.addAll(session.parts()));
        draft.entry(Step.TAKE_APART, "what is screwed or hung", loose)
                .takes("take apart", loose.size())
                .needs(Needs.BENCH)
                .add();
        finish(draft, input, false, order);
        reassemble();
        hardware();
        String title = assembly.piece().title();
        double square = assembly.parts().stream().mapToDouble(CoatStep::square).sum();
        draft.entry(Step.CHECK, title, all).takes("check", all.size()).add();
        draft.entry(Step.PHOTOGRAPH, title, all).takes("photograph", 1).add();
        draft.entry(Step.WRAP, title, all).takes("wrap", square / 2).add();
        draft.entry(Step.DELIVER, title, all).takes("deliver", 1).add();
    }

    /** Coats that go on before the glue-up, or those that go on the piece that fits. */
    static void finish(Draft draft, RouteInput input, boolean beforeAssembly, GlueOrder order) {
        DryingRoom room = DryingRoom.of(input.assembly(), beforeAssembly ? List.of() : order.sessions());
        for (CoatStep coat : CoatStep.of(input.finish())) {
            if (coat.beforeAssembly() == beforeAssembly) {
                draft.entry(Step.FINISH, coat.title(), coat.parts())
                        .takes("finish", coat.square())
                        .set(coat.how())
                        .uses(coat.used())
                        .needs(Needs.coating(
                                coat.sprayed(),
                                room.of(coat.parts()),
                                coat.pause().hours()))
                        .then(coat.pause())
                        .add();
            }
        }
    }

    private void reassemble() {
        Map<String, List<Session>> alike = new LinkedHashMap<>();
        for (Session session : order.fastened()) {
            alike.computeIfAbsent(AssemblySteps.alike(session.name()), k -> new ArrayList<>())
                    .add(session);
        }
        alike.forEach((name, sessions) -> draft.entry(
                        Step.REASSEMBLE,
                        name,
                        sessions.stream()
                                .flatMap(session -> session.parts().stream())
                                .toList())
                .takes(
                        "reassemble",
                        sessions.stream()
                                .flatMap(session -> session.closings().stream())
                                .mapToInt(closing -> closing.joints().size())
                                .sum())
                .uses(fixings.of(sessions))
                .needs(Needs.BENCH)
                .add());
    }

    private void hardware() {
        Map<String, List<Fitting>> kinds = new LinkedHashMap<>();
        for (Fitting fitting : assembly.fittings()) {
            String kind = HARDWARE.stream()
                    .filter(fitting.what()::contains)
                    .findFirst()
                    .orElse("other fitting");
            kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(fitting);
        }
        kinds.forEach((kind, fittings) -> draft.entry(
                        Step.HARDWARE,
                        kind + "s",
                        fittings.stream()
                                .flatMap(fitting -> fitting.on().stream())
                                .toList())
                .takes(kind, fittings.stream().mapToInt(Fitting::count).sum())
                .set(fittings.stream().map(Fitting::what).distinct().toList())
                .uses(fixings.screws(fittings))
                .needs(Needs.BENCH)
                .add());
    }
}
