package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/** Where the hinges of one door can go: the same distance from both ends and evenly between. */
final class HingePlaces {
    private final Workings workings;
    private final Door door;
    private final String profile;
    private final Maker maker;
    private final Optional<Grid> grid;

    /** Makes the holes of one hinge. */
    interface Maker {
        /** @param up the height of its middle @param index which of the door's hinges, from 0 at the bottom */
        List<Feature> holes(Dim up, int index);
    }

    /** @param fromEnd of the door to the middle of its last hinges @param ups heights from the bottom @param holes of each @param clear whether nothing is in their way */
    record Found(Dim fromEnd, List<Dim> ups, List<List<Feature>> holes, boolean clear) {}

    /** @param profile whose distances from the ends are asked for */
    HingePlaces(Workings workings, Door door, String profile, Maker maker) {
        this.workings = workings;
        this.door = door;
        this.profile = profile;
        this.maker = maker;
        grid = Grid.of(door.fitting(), workings);
    }

    /** Distances from the ends in the order in which they are tried: what the maker said, or the usual one and on from it. */
    List<Dim> distances() {
        Dim said = door.fitting().sizes().get("from end");
        return said != null ? List.of(said) : usualDistances();
    }

    /** The usual distance from the ends, and on from it in steps to both sides. */
    List<Dim> usualDistances() {
        Dim usual = workings.size(profile, "from end");
        Dim step = grid.map(Grid::pitch).orElseGet(() -> workings.size(profile, "step"));
        List<Dim> all = new ArrayList<>(List.of(usual));
        for (int k = 1; ; k++) {
            Dim inward = usual.plus(step.times(k));
            Dim outward = usual.minus(step.times(k));
            boolean in = inward.compareTo(workings.size(profile, "most from end")) <= 0;
            boolean out = outward.compareTo(workings.size(profile, "least from end")) >= 0;
            if (in) {
                all.add(inward);
            }
            if (out) {
                all.add(outward);
            }
            if (!in && !out) {
                return all;
            }
        }
    }

    /** What the hinges would be at a distance from both ends. */
    Found at(Dim fromEnd) {
        List<Dim> ups = ups(fromEnd);
        List<List<Feature>> holes = new ArrayList<>();
        boolean clear = true;
        for (int i = 0; i < ups.size(); i++) {
            List<Feature> made = maker.holes(ups.get(i), i);
            holes.add(made);
            clear = clear
                    && made.stream().allMatch(workings::isClear)
                    && inTheWay(ups.get(i)).isEmpty();
        }
        return new Found(fromEnd, ups, holes, clear);
    }

    private List<Dim> ups(Dim fromEnd) {
        int count = Math.max(2, door.fitting().count());
        Dim lowest = onRow(door.face().bottom().plus(fromEnd));
        Dim highest = onRow(door.face().top().minus(fromEnd));
        List<Dim> ups = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ups.add(
                    i == 0
                            ? lowest
                            : i == count - 1
                                    ? highest
                                    : onRow(lowest.plus(highest.minus(lowest).share(i, count - 1L))));
        }
        return ups;
    }

    /** In a system case both holes of a cup hinge's plate lie on rows. */
    private Dim onRow(Dim up) {
        if (!profile.equals(HardwareProfiles.CUP_HINGE)) {
            return up;
        }
        Dim half = size("plate holes apart").half();
        return grid.map(rows -> rows.nearest(up.minus(half)).plus(half)).orElse(up);
    }

    /** The part that stands where the arm and the plate of a hinge would be. */
    Optional<Part> inTheWay(Dim up) {
        Box place = place(up);
        String own = Workings.parent(door.fitting().path());
        return workings.assembly().parts().stream()
                .filter(part -> !part.path().startsWith(own))
                .filter(part -> share(part.box(), place))
                .filter(part -> !isWall(part))
                .findFirst();
    }

    private boolean isWall(Part part) {
        return door.wall().parts().stream().anyMatch(wall -> wall.path().equals(part.path()));
    }

    private Box place(Dim up) {
        Dim reach = size("plate reach");
        Dim plane = door.wall().plane();
        Dim in = door.hung().isFar() ? plane.minus(size("arm wide")) : plane.plus(size("arm wide"));
        Dim behind = door.face().back();
        return door.opening()
                .box()
                .with(door.hung(), plane)
                .with(door.hung().opposite(), in)
                .with(Side.FRONT, behind)
                .with(Side.BACK, behind.plus(size("arm reach")))
                .with(Side.BOTTOM, up.minus(reach))
                .with(Side.TOP, up.plus(reach));
    }

    private static boolean share(Box a, Box b) {
        for (Axis axis : Axis.values()) {
            Length overlap = min(a.plane(Side.of(axis, true)), b.plane(Side.of(axis, true)))
                    .minus(max(a.plane(Side.of(axis, false)), b.plane(Side.of(axis, false))));
            if (!overlap.isPositive()) {
                return false;
            }
        }
        return true;
    }

    private static Length min(Dim a, Dim b) {
        return a.value().min(b.value());
    }

    private static Length max(Dim a, Dim b) {
        return a.value().max(b.value());
    }

    private Dim size(String value) {
        return workings.size(HardwareProfiles.CUP_HINGE, value);
    }
}
