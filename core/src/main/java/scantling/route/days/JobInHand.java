package scantling.route.days;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import scantling.route.Route;

/**
 * One job in hand.
 *
 * @param name what it is called
 * @param route everything done to it
 * @param due the day by whose end it should be delivered, where said
 * @param priority how much its being late matters, at least 1
 * @param arrives the day on which material is there, by words in the names of receiving operations; empty for all
 * @param done what has been done, by id of the operation
 */
public record JobInHand(
        String name,
        Route route,
        Optional<LocalDate> due,
        int priority,
        Map<String, LocalDate> arrives,
        Map<String, Done> done) {
    /** When an operation was done. @param from when it was begun @param to when it was finished, if it is */
    public record Done(Instant from, Optional<Instant> to) {}

    /** Takes its own copies. */
    public JobInHand {
        arrives = Map.copyOf(arrives);
        done = Map.copyOf(done);
    }
}
