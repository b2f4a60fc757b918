package scantling.route;

import java.util.List;
import java.util.function.ToDoubleFunction;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.route.glue.Glue;

/** From stock to parts of finished size. */
final class MillingSteps {
    private final Draft draft;
    private final Glue glue;

    MillingSteps(Draft draft, Glue glue) {
        this.draft = draft;
        this.glue = glue;
    }

    void write(List<SawGroup> groups) {
        for (SawGroup group : groups) {
            String name = group.title();
            List<String> parts = parts(group.blanks());
            draft.entry(Step.RECEIVE, name, parts)
                    .takes("receive and stack", group.stock())
                    .add();
            switch (group.material().kind()) {
                case SOLID -> solid(name, group.blanks(), parts);
                case SHEET -> sheet(name, group.blanks(), parts);
                case STICK ->
                    draft.entry(Step.CUT_STICKS, name, parts)
                            .takes("cut sticks", sum(group.blanks(), Blank::pieces))
                            .add();
            }
            draft.entry(Step.MARK, name, parts)
                    .takes("mark faces", parts.size())
                    .needs(Needs.BENCH)
                    .add();
        }
    }

    private void solid(String name, List<Blank> blanks, List<String> parts) {
        double pieces = sum(blanks, Blank::pieces);
        double metres = sum(blanks, MillingSteps::metres);
        draft.entry(Step.CROSSCUT, name, parts).takes("crosscut rough", pieces).add();
        draft.entry(Step.RIP, name, parts).takes("rip", metres).add();
        draft.entry(Step.FIRST_MILL, name, parts)
                .takes("joint and plane", metres)
                .then(Pause.of("rest on stickers"))
                .add();
        glued(name, blanks);
        draft.entry(Step.FINAL_MILL, name, parts)
                .takes(
                        "final mill",
                        sum(blanks, blank -> blank.rough().length().value().toMetres()))
                .add();
        draft.entry(Step.CUT_TO_LENGTH, name, parts)
                .takes("cut to length", parts.size())
                .add();
        draft.entry(Step.CLEAN_ENDS, name, parts)
                .takes("clean the ends", 2.0 * parts.size())
                .needs(Needs.BENCH)
                .add();
    }

    private void sheet(String name, List<Blank> blanks, List<String> parts) {
        draft.entry(Step.CUT_SHEETS, name, parts)
                .takes("cut sheets", sum(blanks, Blank::pieces))
                .add();
        glued(name, blanks);
    }

    /** Strips side by side and layers on one another, glued before they are milled for the last time. */
    private void glued(String name, List<Blank> all) {
        List<Blank> blanks = all.stream().filter(blank -> blank.pieces() > 1).toList();
        double metres = sum(
                blanks,
                blank -> (blank.pieces() - 1) * blank.rough().length().value().toMetres());
        double square = sum(blanks, MillingSteps::jointArea);
        Length widest =
                blanks.stream().map(blank -> blank.rough().width().value()).reduce(Length.ZERO, Length::max);
        int clamps = (int) Math.ceil(2
                * blanks.stream()
                        .mapToDouble(blank -> blank.rough().length().value().toMetres())
                        .max()
                        .orElse(0));
        draft.entry(Step.GLUE_BLANK, name, parts(blanks))
                .takes("glue up blank", metres)
                .uses(AssemblySteps.spread(glue, square))
                .needs(Needs.gluing(clamps, widest, glue.clampMinutes() / 60))
                .then(AssemblySteps.beforeMachining(glue))
                .add();
    }

    private static double jointArea(Blank blank) {
        double length = blank.rough().length().value().toMetres();
        double thickness = blank.layerThickness().value().toMetres();
        double width = blank.rough().width().value().toMetres();
        return length * ((blank.strips() - 1) * thickness + (blank.layers() - 1) * width);
    }

    private static double metres(Blank blank) {
        return blank.pieces() * blank.rough().length().value().toMetres();
    }

    private static double sum(List<Blank> blanks, ToDoubleFunction<Blank> of) {
        return blanks.stream().mapToDouble(of).sum();
    }

    private static List<String> parts(List<Blank> blanks) {
        return blanks.stream().map(Blank::part).toList();
    }
}
