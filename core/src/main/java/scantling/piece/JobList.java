package scantling.piece;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Span;

/**
 * The jobs in hand, as the maker lists them.
 *
 * @param workshop when there is work, and what there is only so much of, where the list says so
 * @param jobs in the order given
 */
public record JobList(Optional<Workshop> workshop, List<Listed> jobs) {
    /** Takes its own copy. */
    public JobList {
        jobs = List.copyOf(jobs);
    }

    /**
     * One job.
     *
     * @param name what it is called here
     * @param piece the file of the piece
     * @param due the day by whose end it should be delivered, where said
     * @param priority how much its being late matters, 1 to 9
     * @param arrives the day on which material is there, by the name of the material; under the empty name for all
     * @param done what has been done, by the name of the operation
     * @param span where it is said
     */
    public record Listed(
            String name,
            String piece,
            Optional<LocalDate> due,
            int priority,
            Map<String, LocalDate> arrives,
            Map<String, Done> done,
            Span span) {}

    /** When an operation was done. @param from when it was begun @param to when it was finished; nothing while it goes on */
    public record Done(LocalDateTime from, Optional<LocalDateTime> to, Span span) {}
}
