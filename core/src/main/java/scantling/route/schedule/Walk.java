package scantling.route.schedule;

import java.util.ArrayList;
import java.util.List;

/** Goes through a network in an order that was found before, each task as early as it then can. */
public final class Walk {
    private Walk() {}

    /** The timetable of a network whose tasks are put in the order in which another timetable begins them. */
    public static Timetable inOrderOf(Network network, Timetable other) {
        int[] starts = other.places().stream().mapToInt(Timetable.Place::start).toArray();
        Serial serial = new Serial(network);
        serial.run(Orders.byTime(starts, network.order()));
        List<Timetable.Place> places = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            places.add(new Timetable.Place(serial.starts[i], serial.ends[i]));
        }
        return new Timetable(places, serial.score(), new Score(0, 0, 0), Timetable.Status.FIRST, "");
    }
}
