package scantling.finishing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.piece.Material;
import scantling.timber.Table;

/** Lays the coats of a group one after the other: how much, what before, what wait, what to mind. */
final class Coatings {
    private static final Table NOTES = Table.read("finishing/notes.csv");

    private final Habits habits;
    private final List<Face> faces;
    private final FinishGroup.Areas areas;
    private final Cautions cautions;
    private final boolean openPored;

    Coatings(Habits habits, List<Face> faces, FinishGroup.Areas areas) {
        this.habits = habits;
        this.faces = faces;
        this.areas = areas;
        this.cautions = new Cautions(faces, habits.use());
        this.openPored = faces.stream()
                .anyMatch(face -> Wood.of(face.part()).filter(Wood::openPored).isPresent());
    }

    List<Coating> of(List<Applied> steps) {
        List<Coating> all = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Applied step = steps.get(i);
            double nextAfter = i + 1 < steps.size() ? steps.get(i + 1).after() : 0;
            for (int number = 1; number <= step.times(); number++) {
                boolean lastOfStep = number == step.times();
                boolean last = lastOfStep && i == steps.size() - 1;
                all.add(coating(step, number, all, lastOfStep ? nextAfter : 0, last));
            }
        }
        return all;
    }

    private Coating coating(Applied step, int number, List<Coating> before, double atLeast, boolean last) {
        Optional<Amount> spread = Coverage.spread(step.coat(), step.method(), step.thinned());
        double thirst = before.isEmpty() && openPored ? Figures.of("first coat takes") : 1;
        Optional<Amount> sand = sand(step, before);
        return new Coating(
                step.key(),
                step.coat(),
                number,
                step.times(),
                step.method(),
                areas.whole(),
                spread,
                spread.map(each -> Coverage.litres(areas.whole(), each, thirst)).orElse(Amount.ZERO),
                step.thinned(),
                sand,
                drying(step.coat(), atLeast),
                Spray.of(step.coat(), step.method()),
                passes(step.method()),
                cautions.of(step, before.isEmpty(), sand.isPresent(), last),
                notes(step, before, last));
    }

    /** Bare wood to the grit of the coat or the maker's; a film to the grit between its coats; a stain is not sanded. */
    private Optional<Amount> sand(Applied step, List<Coating> before) {
        if (before.isEmpty()) {
            return habits.sand().map(Amount::exactly).or(() -> step.coat().find("sand before"));
        }
        Coat under = before.get(before.size() - 1).coat();
        return under.role().equals("stain") ? Optional.empty() : under.find("sand between");
    }

    private Coating.Drying drying(Coat coat, double atLeast) {
        Amount slower = habits.air().slower(coat);
        Amount least = slowed(coat.find("recoat after").orElse(Amount.ZERO), slower);
        Amount raised = new Amount(
                Math.max(least.low(), atLeast), Math.max(least.likely(), atLeast), Math.max(least.high(), atLeast));
        return new Coating.Drying(
                raised,
                coat.find("recoat before").map(Amount::high),
                slowed(coat.find("handle after").orElse(Amount.ZERO), slower),
                coat.sourceOf("recoat after"));
    }

    private static Amount slowed(Amount hours, Amount slower) {
        return new Amount(hours.low() * slower.low(), hours.likely() * slower.likely(), hours.high() * slower.high());
    }

    /** Strips of a gun over every face, along its longer side. */
    private int passes(Method method) {
        return method.sprays()
                ? faces.stream().mapToInt(face -> method.passes(narrow(face))).sum()
                : 0;
    }

    private static double narrow(Face face) {
        double width = face.part().width().value().toMillimetres();
        double thickness = face.part().thickness().value().toMillimetres();
        double length = face.part().length().value().toMillimetres();
        if (face.isEnd() || face.isEdge()) {
            return thickness;
        }
        return Math.min(width, length);
    }

    private List<String> notes(Applied step, List<Coating> before, boolean last) {
        boolean bare = before.isEmpty();
        List<String> notes = new ArrayList<>();
        Coat coat = step.coat();
        if (bare) {
            notes.add(note("skip"));
            notes.add(note("end grain"));
            if (faces.stream().anyMatch(face -> face.part().material().kind() == Material.Kind.SHEET)) {
                notes.add(note("veneer"));
            }
            if (coat.isWaterborne()) {
                notes.add(note("water"));
            }
        }
        if (coat.film() && before.stream().noneMatch(each -> each.coat().film())) {
            notes.add(note("film"));
        }
        coat.find("recoat before")
                .filter(window -> !last)
                .ifPresent(window -> notes.add("Next coat within %s h; later, scuff with %s first."
                        .formatted(
                                Say.number(window.high()),
                                coat.find("sand between").map(Say::range).orElse("320"))));
        coat.find("pot life")
                .ifPresent(life -> notes.add("Once mixed it can be used for %s h; mix what goes on in that time."
                        .formatted(Say.range(life))));
        return notes;
    }

    private static String note(String when) {
        return NOTES.getRow("when", when).text("says");
    }
}
