package scantling.web;

import java.util.List;
import java.util.Set;

/**
 * One operation at the bench.
 *
 * @param key its name in the bench log; the same operation has the same key in every plan that holds it
 * @param stage what sort of work: saw, mill, cut to size, machine
 * @param title what is to be done, in a few words
 * @param dials what is set, the one to look at first
 * @param notes what else to know
 * @param drawing which of the page's drawings shows it; -1 for none
 * @param ticks the pieces it is done to, one after the other
 * @param numbers names of numbers that are best measured here
 */
public record BenchCard(
        String key,
        String stage,
        String title,
        List<Dial> dials,
        List<String> notes,
        int drawing,
        List<Tick> ticks,
        List<String> numbers) {
    /** Takes its own copies. */
    public BenchCard {
        dials = List.copyOf(dials);
        notes = List.copyOf(notes);
        ticks = List.copyOf(ticks);
        numbers = List.copyOf(numbers);
    }

    /** What is set. @param label what it is @param figure the value @param unit in words; empty when the figure says it */
    public record Dial(String label, String figure, String unit) {}

    /**
     * One piece.
     *
     * @param subject its name in the bench log
     * @param words what it is called at the bench
     * @param cut whether ticking it means that a part is cut to size
     */
    public record Tick(String subject, String words, boolean cut) {}

    /** Whether everything of it is done. @param done subjects that are */
    boolean isDone(Set<String> done) {
        return done.contains(key)
                || (!ticks.isEmpty() && ticks.stream().allMatch(tick -> done.contains(tick.subject())));
    }
}
