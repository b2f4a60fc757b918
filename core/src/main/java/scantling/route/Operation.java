package scantling.route;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing the maker does.
 *
 * @param id its name, unique in the piece: {@code glue up / left end}
 * @param step what kind of thing it is
 * @param title for people
 * @param parts paths of the parts it is done to
 * @param settings how machines stand for it, in words
 * @param supplies what it uses up
 * @param work the time standard it is reckoned by
 * @param amount how much of that work, in the standard's unit
 * @param hands minutes of hands, set-up included
 * @param observations how many logged times stand behind the minutes
 * @param pause before what comes next can be done to its parts
 * @param needs what it takes up besides hands
 * @param cautions what can hurt someone
 * @param after ids of what must be done first
 */
public record Operation(
        String id,
        Step step,
        String title,
        List<String> parts,
        List<String> settings,
        List<Supply> supplies,
        String work,
        double amount,
        Minutes hands,
        int observations,
        Pause pause,
        Needs needs,
        List<Caution> cautions,
        List<String> after) {
    /** Takes its own copies. */
    public Operation {
        parts = List.copyOf(parts);
        settings = List.copyOf(settings);
        supplies = List.copyOf(supplies);
        cautions = List.copyOf(cautions);
        after = List.copyOf(after);
    }

    /** The same with one more thing to know of it. */
    public Operation with(String setting) {
        List<String> more = new ArrayList<>(settings);
        more.add(setting);
        return new Operation(
                id,
                step,
                title,
                parts,
                more,
                supplies,
                work,
                amount,
                hands,
                observations,
                pause,
                needs,
                cautions,
                after);
    }

    Operation timed(Times times) {
        Times.Standard standard = times.of(work);
        return new Operation(
                id,
                step,
                title,
                parts,
                settings,
                supplies,
                work,
                amount,
                hands(standard, amount),
                standard.observations(),
                pause,
                needs,
                cautions,
                after);
    }

    static Minutes hands(Times.Standard standard, double amount) {
        double setUp = standard.setUp();
        return standard.each().times(amount).plus(new Minutes(setUp, setUp, setUp));
    }
}
