package scantling.hardware;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/** What concealed undermount slides ask of the back of a drawer box: a notch at each lower corner and a hole for a hook. */
record UndermountBack(Workings workings, Fitting fitting, Opening opening) {
    private static final String PROFILE = HardwareProfiles.UNDERMOUNT;

    /** Cuts it. @param left the box's left side @param right the box's right side */
    void cut(Part left, Part right) {
        Optional<Part> back =
                across(left).reduce((a, b) -> b.box().front().compareTo(a.box().front()) > 0 ? b : a);
        back.ifPresent(part -> {
            Dim floor = left.box().bottom().plus(size("floor up"));
            corner(part, Side.LEFT, left.box().right(), floor);
            corner(part, Side.RIGHT, right.box().left(), floor);
        });
    }

    /** The front and the back of the box. */
    private java.util.stream.Stream<Part> across(Part side) {
        String box = Workings.parent(side.path());
        return opening.fills().stream()
                .filter(path -> path.startsWith(box))
                .flatMap(path -> workings.find(path).stream())
                .filter(part -> part.lie().length() == Axis.ACROSS && part.lie().thickness() == Axis.DEEP);
    }

    /** @param inside the inner face of the side there @param floor the underside of the floor */
    private void corner(Part back, Side end, Dim inside, Dim floor) {
        Box notch = back.box()
                .with(end.opposite(), inward(inside, end, size("notch width")))
                .with(Side.TOP, floor);
        String path = fitting.path() + " / " + end.word();
        workings.add(Cut.of(
                path + " notch",
                fitting.path(),
                Feature.Kind.NOTCH,
                back,
                notch,
                Side.BOTTOM,
                Optional.empty(),
                notchSetting(notch)));
        Dim deep = Dim.smallerOf(size("hook hole depth"), back.thickness());
        Drill drill =
                new Drill(Drill.BRAD_POINT, size("hook hole"), deep, List.of("From behind, for the slide's hook."));
        Spot at = new Spot(
                inward(inside, end, size("hook hole in")), back.box().back(), floor.plus(size("hook hole up")));
        workings.add(workings.hole(path + " hook hole", fitting.path(), back, Side.BACK, at, drill));
    }

    private static Dim inward(Dim inside, Side end, Dim by) {
        return end.isFar() ? inside.minus(by) : inside.plus(by);
    }

    private static Setting notchSetting(Box notch) {
        Map<String, Dim> sizes = new LinkedHashMap<>();
        sizes.put("height", notch.extent(Axis.UP));
        sizes.put("width", notch.extent(Axis.ACROSS));
        return new Setting(
                "band saw or handsaw",
                "",
                sizes,
                List.of("Cut with the back standing on its lower edge, both ends alike."));
    }

    private Dim size(String value) {
        return workings.profiles().of(PROFILE, value);
    }
}
