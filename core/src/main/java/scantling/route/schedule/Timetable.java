package scantling.route.schedule;

import java.util.List;

/**
 * When every task is done.
 *
 * @param places of the tasks, in their order
 * @param score how good it is
 * @param bound what no timetable can better
 * @param status how it was found
 * @param note what to know of how it was found, in a sentence; may be empty
 */
public record Timetable(List<Place> places, Score score, Score bound, Status status, String note) {
    /** Takes its own copy. */
    public Timetable {
        places = List.copyOf(places);
    }

    /** Where a task is in time. @param start tick of the clock at which it begins @param end tick at which its work is done */
    public record Place(int start, int end) {}

    /** How a timetable was found. */
    public enum Status {
        /** The first sound one. */
        FIRST,
        /** Found by search; a better one may exist. */
        IMPROVED,
        /** None can be better. */
        BEST
    }

    Timetable with(Score newBound, Status newStatus, String newNote) {
        return new Timetable(places, score, newBound, newStatus, newNote);
    }
}
