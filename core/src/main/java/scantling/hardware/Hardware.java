package scantling.hardware;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Assembly;
import scantling.feature.Features;
import scantling.feature.WoodScrew;
import scantling.stock.HardwareProfiles;

/** Everything that fittings take from parts. */
public final class Hardware {
    private Hardware() {}

    /** The same with nothing cut before. */
    public static Features of(Assembly assembly, HardwareProfiles profiles) {
        return of(assembly, profiles, Features.NONE, WoodScrew.all());
    }

    /**
     * Works out the holes, notches and recesses for all fittings of an assembly. Slides come first, then hinges, which
     * move aside for them, then the rest.
     *
     * @param assembly the piece
     * @param profiles what the shop's fittings ask for
     * @param before what joints have cut already; fittings that can move keep clear of it
     * @param screws by gauge, with their holes
     * @return the features of fittings alone, why they are so, and what stands against them
     */
    public static Features of(Assembly assembly, HardwareProfiles profiles, Features before, List<WoodScrew> screws) {
        Workings workings = new Workings(assembly, profiles, before, screws);
        new Grids(workings).explain();
        workings.assembly().fittings().stream()
                .filter(fitting -> fitting.words().containsKey("runs on"))
                .forEach(fitting -> new SlideWork(workings, fitting).drill());
        Collection<List<Door>> cups = doors(workings, HardwareProfiles.CUP_HINGE);
        cups.forEach(doors -> HingeWork.drill(workings, doors));
        Collection<List<Door>> butts = doors(workings, HardwareProfiles.BUTT_HINGE);
        butts.forEach(doors -> ButtWork.cut(workings, doors));
        new PinRows(workings).drill();
        workings.fittings("drawer-front fixing").forEach(fitting -> new FrontWork(workings, fitting).drill());
        workings.fittings("handle").forEach(fitting -> new HandleWork(workings, fitting).drill());
        workings.fittings("top fastening").forEach(fitting -> new TopWork(workings, fitting).cut());
        workings.fittings("knock-down fitting").forEach(fitting -> new KnockDownWork(workings, fitting).drill());
        workings.fittings("bed fitting").forEach(fitting -> new BoltWork(workings, fitting).drill());
        workings.fittings("levelling foot").forEach(fitting -> new FootWork(workings, fitting).drill());
        cups.forEach(doors -> doors.forEach(door -> new Swing(workings, door).check()));
        butts.forEach(doors -> doors.forEach(door -> new Swing(workings, door).check()));
        new Reveals(workings).check();
        return workings.done();
    }

    /** The doors on one kind of hinges, those of one opening together. */
    private static Collection<List<Door>> doors(Workings workings, String profile) {
        Map<String, List<Door>> byOpening = new LinkedHashMap<>();
        workings.assembly().fittings().stream()
                .filter(fitting -> fitting.is("profile", profile))
                .flatMap(fitting -> Door.of(workings, fitting).stream())
                .forEach(door -> byOpening
                        .computeIfAbsent(door.opening().path(), key -> new ArrayList<>())
                        .add(door));
        return byOpening.values();
    }
}
