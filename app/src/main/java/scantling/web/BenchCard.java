package scantling.web;

import java.util.List;

/**
 * One operation at the bench.
 *
 * @param key its name in the bench log; the same operation has the same key in every plan that holds it
 * @param stage what sort of work, in words
 * @param title what is to be done, in a few words
 * @param dials what is set for all of it; figures of one piece stand with the piece
 * @param told what else to know
 * @param drawing which of the page's drawings shows all of it; -1 for none
 * @param ticks the pieces it is done to, one after the other
 * @param numbers names of numbers that are best measured here
 * @param time how long it takes
 * @param sawn what a saw card brings when it is done, as the shop reads it; empty for other cards
 * @param partly what it brings after each number of its cuts, as the shop reads it; empty for other cards
 * @param done whether all of it is
 */
public record BenchCard(
        String key,
        String stage,
        String title,
        List<Dial> dials,
        Told told,
        int drawing,
        List<Tick> ticks,
        List<String> numbers,
        Time time,
        String sawn,
        String partly,
        boolean done) {
    /** Takes its own copies. */
    public BenchCard {
        dials = List.copyOf(dials);
        ticks = List.copyOf(ticks);
        numbers = List.copyOf(numbers);
    }

    /** What is set. @param label what it is @param figure the value @param unit in words; empty when the figure says it */
    public record Dial(String label, String figure, String unit) {}

    /**
     * One piece.
     *
     * @param subject its name in the bench log
     * @param part path of the part; empty where it is none
     * @param words what it is called at the bench
     * @param cut whether ticking it means that a part is cut to size
     * @param done whether it is ticked
     * @param dials its own figures
     * @param drawing of it; -1 for none
     */
    public record Tick(
            String subject, String part, String words, boolean cut, boolean done, List<Dial> dials, int drawing) {
        /** Takes its own copy. */
        public Tick {
            dials = List.copyOf(dials);
        }

        /** Its figures as the page's script takes them: label, figure and unit by turns, apart by bars. */
        public String figures() {
            return String.join(
                    "|",
                    dials.stream()
                            .map(dial -> dial.label() + "|" + dial.figure() + "|" + dial.unit())
                            .toList());
        }
    }

    /**
     * What else to know.
     *
     * @param notes how machines stand, what it uses up
     * @param cautions what can hurt someone
     * @param margin what the plan says against it
     * @param ready what must be done, or have set, first
     * @param first what to measure first
     */
    public record Told(
            List<String> notes, List<String> cautions, List<String> margin, List<String> ready, List<First> first) {
        /** Takes its own copies. */
        public Told {
            notes = List.copyOf(notes);
            cautions = List.copyOf(cautions);
            margin = List.copyOf(margin);
            ready = List.copyOf(ready);
            first = List.copyOf(first);
        }
    }

    /** What to measure before parts are cut. @param name of the number @param words why */
    public record First(String name, String words) {}

    /** How long. @param minutes of hands, likely @param pause minutes before what comes next @param why what happens then */
    public record Time(int minutes, int pause, String why) {}

    /** The figures to show first: those of the first piece that is not done, else of the whole. */
    public List<Dial> first() {
        return ticks.stream()
                .filter(tick -> !tick.done() && !tick.dials().isEmpty())
                .map(Tick::dials)
                .findFirst()
                .orElse(dials);
    }
}
