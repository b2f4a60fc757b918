package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.measure.Making;
import scantling.piece.Material;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/**
 * The holes for one pair of slides: in what stands beside the opening, and in the box where the slide is screwed to it.
 * The rows begin the profile's distance behind the front of the box, which for an inset drawer lies behind its front.
 */
final class SlideWork {
    private static final int USUAL_GAUGE = 6;
    private static final String SYSTEM_SCREWS = "System screws.";

    private final Workings workings;
    private final Fitting fitting;
    private final HardwareProfiles profiles;
    private final String profile;
    private final Dim length;

    SlideWork(Workings workings, Fitting fitting) {
        this.workings = workings;
        this.fitting = fitting;
        profiles = workings.profiles();
        profile = fitting.words().getOrDefault("runs on", "");
        length = fitting.sizes().getOrDefault("length", Dim.ZERO);
    }

    void drill() {
        Optional<Part> left = side(0);
        Optional<Part> right = side(1);
        Optional<Opening> opening = left.flatMap(workings::openingOf);
        if (left.isEmpty() || right.isEmpty() || opening.isEmpty()) {
            return;
        }
        Dim line = new SlideLine(workings, fitting, profile).of(left.get());
        runner(left.get(), opening.get().box(), Side.LEFT, line);
        runner(right.get(), opening.get().box(), Side.RIGHT, line);
        lowerThanSlide(left.get());
        explain(left.get());
        if (profile.equals(HardwareProfiles.UNDERMOUNT)) {
            new UndermountBack(workings, fitting, opening.get()).cut(left.get(), right.get());
        } else {
            member(left.get(), Side.LEFT, line);
            member(right.get(), Side.RIGHT, line);
        }
    }

    /** What it is screwed on with, and why. */
    private void explain(Part boxSide) {
        List<Feature> runners = workings.made(fitting.path()).stream()
                .filter(hole ->
                        !hole.part().equals(boxSide.path()) && hole.path().contains(" hole "))
                .filter(hole -> !hole.path().contains(" box hole "))
                .toList();
        if (runners.isEmpty()) {
            return;
        }
        boolean system = runners.get(0).setting().notes().contains(SYSTEM_SCREWS);
        Dim hole = profiles.of(profile, "hole");
        workings.needs(
                fitting.path(),
                runners.size(),
                system ? "system screw" : "wood screw",
                system ? workings.say(hole) : "no. " + USUAL_GAUGE);
        workings.choose(
                fitting.path(),
                system
                        ? "System screws in holes of %s, %s deep, in what stands beside the opening%s: they leave less play in a punched slide than pan-head screws."
                                .formatted(
                                        workings.say(hole),
                                        workings.say(runners.get(0).depth()),
                                        fitting.words().containsKey("panel")
                                                ? ", which is drilled on the 32 mm system"
                                                : ", which is a sheet")
                        : "Wood screws no. %d in pilots of %s, %s deep: what stands beside the opening is solid wood and is not drilled on the 32 mm system; say holes: 32 mm system for system screws."
                                .formatted(
                                        USUAL_GAUGE,
                                        workings.say(runners.get(0)
                                                .radius()
                                                .map(radius -> radius.times(2))
                                                .orElse(Dim.ZERO)),
                                        workings.say(runners.get(0).depth())),
                List.of(hole, runners.get(0).depth()),
                hole.making() instanceof Making.LookedUp found ? found.source() : "the fitting's profile");
    }

    /** A side-mount slide needs a side as high as itself. */
    private void lowerThanSlide(Part boxSide) {
        profiles.find(profile, "slide height")
                .filter(height -> height.compareTo(boxSide.width()) > 0)
                .ifPresent(height -> workings.find(new Finding(
                        Finding.Severity.STOP,
                        fitting.path(),
                        "%s is %s high, and the slide on it is %s high."
                                .formatted(boxSide.path(), workings.say(boxSide.width()), workings.say(height)),
                        List.of(boxSide.width(), height),
                        "check the sheet that came with your slide",
                        "Make the box %s high at least, or run it on wood or on concealed slides."
                                .formatted(workings.say(height)))));
    }

    private Optional<Part> side(int index) {
        return index < fitting.on().size() ? workings.find(fitting.on().get(index)) : Optional.empty();
    }

    /** The member that is screwed to the case. */
    private void runner(Part boxSide, Box air, Side side, Dim line) {
        Wall wall = Wall.of(workings, air, side, Workings.parent(fitting.path()));
        Dim last = boxSide.box().front().plus(length).minus(profiles.of(profile, "last hole before end"));
        Dim first = boxSide.box().front().plus(profiles.of(profile, "front hole"));
        List<Held> held = new ArrayList<>();
        for (Dim deep : Spots.row(first, profiles.of(profile, "pitch"), last)) {
            Spot at = new Spot(wall.plane(), deep, line);
            wall.holding(at, profiles.of(profile, "hole"))
                    .map(part -> new Held(part, at))
                    .ifPresent(held::add);
        }
        List<Feature> chosen = clear(held, side);
        workings.addAll(chosen);
        judge(wall, chosen, side, line);
    }

    /** The holes that are drilled: spread over the slide, and none that runs into anything. */
    private List<Feature> clear(List<Held> held, Side side) {
        List<Held> left = new ArrayList<>(held);
        while (true) {
            List<Feature> chosen = new ArrayList<>();
            List<Held> blocked = new ArrayList<>();
            for (Held spot : Spots.spread(left, wanted())) {
                Feature hole = runnerHole(spot, side, chosen.size());
                if (workings.isClear(hole)) {
                    chosen.add(hole);
                } else {
                    blocked.add(spot);
                }
            }
            if (!left.removeAll(blocked)) {
                return chosen;
            }
        }
    }

    /** A spot with the part that holds it. */
    private record Held(Part part, Spot at) {}

    private int wanted() {
        return length.compareTo(profiles.of(profile, "third hole from")) >= 0 ? 3 : 2;
    }

    private Feature runnerHole(Held held, Side side, int index) {
        String path = "%s / %s hole %d".formatted(fitting.path(), side.word(), index + 1);
        return workings.hole(path, fitting.path(), held.part(), side.opposite(), held.at(), drill(held.part()));
    }

    /** Sheets and system cases take system screws; solid wood gets pilot holes for wood screws. */
    private Drill drill(Part part) {
        Dim deep = deep(part, profiles.of(profile, "hole depth"));
        boolean system = fitting.words().containsKey("panel") || part.material().kind() == Material.Kind.SHEET;
        return system
                ? new Drill(Drill.BRAD_POINT, profiles.of(profile, "hole"), deep, List.of(SYSTEM_SCREWS))
                : pilot(part, deep);
    }

    private Drill pilot(Part part, Dim deep) {
        return new Drill(
                Drill.TWIST,
                workings.screw(USUAL_GAUGE).pilot(part.material()),
                deep,
                List.of("Wood screws No. %d.".formatted(USUAL_GAUGE)));
    }

    private Dim deep(Part part, Dim wanted) {
        return Dim.smallerOf(wanted, part.thickness().minus(profiles.of("hole", "least behind")));
    }

    /** The member that is screwed to the outside of the box. */
    private void member(Part boxSide, Side side, Dim line) {
        Dim first = boxSide.box().front().plus(profiles.of(profile, "box front hole"));
        Dim last = boxSide.box().front().plus(length).minus(profiles.of(profile, "last hole before end"));
        Drill drill = pilot(boxSide, deep(boxSide, profiles.of(profile, "box hole depth")));
        int index = 0;
        for (Dim deep : Spots.spread(Spots.row(first, profiles.of(profile, "pitch"), last), wanted())) {
            index++;
            String path = "%s / %s box hole %d".formatted(fitting.path(), side.word(), index);
            Spot at = new Spot(boxSide.box().plane(side), deep, line);
            workings.add(workings.hole(path, fitting.path(), boxSide, side, at, drill));
        }
    }

    private void judge(Wall wall, List<Feature> chosen, Side side, Dim line) {
        if (chosen.size() < 2) {
            tooFew(wall, chosen, side, line);
            return;
        }
        Dim bite = chosen.get(0).depth();
        Optional<Part> part = workings.find(chosen.get(0).part());
        if (bite.compareTo(profiles.of("slide", "least bite")) < 0 && part.isPresent()) {
            workings.weakly(part.get(), bite, fitting.path());
        }
        if (part.isPresent() && wall.behind(part.get()).value().isPositive()) {
            workings.packed(part.get(), wall.behind(part.get()), fitting.path());
        }
    }

    private void tooFew(Wall wall, List<Feature> chosen, Side side, Dim line) {
        workings.find(new Finding(
                chosen.isEmpty() && wall.parts().isEmpty() ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                fitting.path(),
                "%s of the holes of %s on the %s finds wood beside the opening, %s above the floor of the piece."
                        .formatted(
                                chosen.isEmpty() ? "None" : "Only one",
                                fitting.path(),
                                side.word(),
                                workings.say(line)),
                List.of(line, length),
                "common practice: a slide is held by two screws at least",
                "Put a board or a filling strip there, flush with the side of the opening."));
    }
}
