package scantling.hardware;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Assembly;
import scantling.construct.Fitting;
import scantling.feature.Features;
import scantling.stock.HardwareProfiles;

/** Everything that fittings take from parts. */
public final class Hardware {
    private Hardware() {}

    /**
     * Works out the holes, notches and recesses for all fittings of an assembly. Slides come first, then hinges, which
     * move aside for them, then the rest.
     *
     * @param assembly the piece
     * @param profiles what the shop's fittings ask for
     * @return the features, why they are so, and what stands against them
     */
    public static Features of(Assembly assembly, HardwareProfiles profiles) {
        Workings workings = new Workings(assembly, profiles);
        List<Fitting> fittings = assembly.fittings();
        fittings.stream()
                .filter(fitting -> fitting.words().containsKey("runs on"))
                .forEach(fitting -> new SlideWork(workings, fitting).drill());
        doors(workings, HardwareProfiles.CUP_HINGE).forEach(doors -> HingeWork.drill(workings, doors));
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
