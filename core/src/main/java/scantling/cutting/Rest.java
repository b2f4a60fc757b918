package scantling.cutting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import scantling.measure.Length;

/**
 * What is left to plan when some cuts of a plan are made: the parts not yet cut free and those that were spoilt, to be taken
 * from the pieces in hand, which cost nothing any more, and from fresh stock. Nothing that is cut changes.
 *
 * @param job what is left, with every piece in hand as stock of its own, called {@code piece b of ply, number 3}
 * @param begun how the old plan would go on with the pieces in hand and with stock not yet begun
 * @param notes what to do first, in words for the maker
 */
public record Rest(CutJob job, List<Begun> begun, List<String> notes) {
    /** Takes its own copies. */
    public Rest {
        begun = List.copyOf(begun);
        notes = List.copyOf(notes);
    }

    /** A piece of stock and the cuts that the old plan has for it. */
    public record Begun(Stock stock, CutTree tree) {}

    /**
     * Where the maker is.
     *
     * @param made by number of the used stock in the plan, how many of its numbered cuts are made; none for stock not named
     * @param spoilt by name of the part, how many copies that were cut free cannot be used
     */
    public record Progress(Map<Integer, Integer> made, Map<String, Integer> spoilt) {
        /** Takes its own copies. */
        public Progress {
            made = Map.copyOf(made);
            spoilt = Map.copyOf(spoilt);
        }
    }

    /**
     * What came of asking for the rest.
     *
     * @param rest there if and only if there are no problems
     * @param problems what in the progress cannot be, in words for the maker
     */
    public record Answer(Optional<Rest> rest, List<String> problems) {
        /** Takes its own copy. */
        public Answer {
            problems = List.copyOf(problems);
        }
    }

    /**
     * A piece that lies on the bench after some cuts of a piece of stock.
     *
     * @param label as the cuts call it
     * @param part which part it is, cut free; empty for a piece that would be cut further, and for what is left over
     * @param more whether the plan would cut it further
     * @param keep whether it is worth keeping for other parts
     * @param place where it lay in the stock; of no width for a stick
     */
    public record OnBench(String label, Optional<CutPart> part, boolean more, boolean keep, Stock.Place place) {
        /** Along the grain. */
        public Length length() {
            return place.length();
        }

        /** Across the grain. */
        public Length width() {
            return place.width();
        }
    }

    /** What lies on the bench after some cuts; nothing while the stock is not cut through, that is, only trimmed. */
    public static List<OnBench> onBench(CutJob job, CutPiece piece, int made) {
        boolean whole = piece.steps().stream().limit(made).allMatch(CutStep::isTrim);
        return whole
                ? List.of()
                : InHand.after(job, piece, made).stream().map(InHand::told).toList();
    }

    /** What is left of a plan. */
    public static Answer of(CutJob job, CutPlan plan, Progress progress) {
        List<String> problems = problems(plan, progress);
        RestMaker maker = new RestMaker(job);
        if (problems.isEmpty()) {
            for (CutPiece piece : plan.used()) {
                maker.piece(piece, progress.made().getOrDefault(piece.number(), 0));
            }
            progress.spoilt().forEach((name, count) -> maker.spoil(name, count).ifPresent(problems::add));
        }
        return problems.isEmpty()
                ? new Answer(Optional.of(maker.rest()), List.of())
                : new Answer(Optional.empty(), problems);
    }

    private static List<String> problems(CutPlan plan, Progress progress) {
        List<String> problems = new ArrayList<>();
        Map<Integer, CutPiece> byNumber = new LinkedHashMap<>();
        plan.used().forEach(piece -> byNumber.put(piece.number(), piece));
        progress.made().forEach((number, cuts) -> {
            CutPiece piece = byNumber.get(number);
            if (piece == null) {
                problems.add("The plan has no stock number (%d); it has 1 to %d."
                        .formatted(number, plan.used().size()));
            } else if (cuts < 0 || cuts > piece.steps().size()) {
                problems.add("Stock number %d has %d cuts; (%d) of them cannot be made."
                        .formatted(number, piece.steps().size(), cuts));
            }
        });
        return problems;
    }

    /** Gathers what is in hand, piece of stock by piece of stock. */
    private static final class RestMaker {
        private final CutJob job;
        private final Map<CutPart, Integer> free = new LinkedHashMap<>();
        private final Map<CutPart, Integer> spoilt = new LinkedHashMap<>();
        private final Map<Stock, Integer> opened = new LinkedHashMap<>();
        private final List<Stock> inHand = new ArrayList<>();
        private final List<Begun> begun = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private final Set<String> broken = new HashSet<>();

        RestMaker(CutJob job) {
            this.job = job;
        }

        void piece(CutPiece piece, int made) {
            long trims = piece.steps().stream().filter(CutStep::isTrim).count();
            if (made == 0 || made < trims) {
                begun.add(new Begun(piece.stock(), piece.tree()));
                return;
            }
            opened.merge(piece.stock(), 1, Integer::sum);
            for (InHand left : InHand.after(job, piece, made)) {
                take(piece, left);
            }
        }

        private void take(CutPiece piece, InHand left) {
            if (left.tree() instanceof CutTree.Part part) {
                free.merge(part.placed().part(), 1, Integer::sum);
                broken.add("row " + part.placed().part().row());
                broken.add("beside " + part.placed().part().beside());
            } else if (left.tree() instanceof CutTree.Cut
                    || left.tree() instanceof CutTree.Offcut offcut && offcut.keep()) {
                Stock stock = left.asStock(piece);
                inHand.add(stock);
                notes.addAll(left.notes(job, piece));
                if (left.tree() instanceof CutTree.Cut) {
                    begun.add(new Begun(stock, left.tree()));
                }
            }
        }

        Optional<String> spoil(String name, int count) {
            int left = count;
            int there = 0;
            for (Map.Entry<CutPart, Integer> entry : free.entrySet()) {
                if (entry.getKey().name().equals(name)) {
                    int here = Math.min(left, entry.getValue());
                    spoilt.merge(entry.getKey(), here, Integer::sum);
                    left -= here;
                    there += entry.getValue();
                }
            }
            return left == 0 && count > 0
                    ? Optional.empty()
                    : Optional.of("(%d) of %s cannot be spoilt: (%d) are cut free.".formatted(count, name, there));
        }

        Rest rest() {
            List<CutPart> parts = new ArrayList<>();
            for (CutPart part : job.parts()) {
                int done = Math.min(part.count(), free.getOrDefault(part, 0));
                free.merge(part, -done, Integer::sum);
                int again = spoilt.getOrDefault(part, 0);
                spoilt.put(part, 0);
                if (part.count() - done + again > 0) {
                    parts.add(apart(part, again).times(part.count() - done + again));
                }
            }
            List<Stock> stock = new ArrayList<>(inHand);
            job.stock().forEach(one -> stock.add(one.left(opened.getOrDefault(one, 0))));
            boolean rows = parts.stream().anyMatch(Matches::isMatched);
            CutJob left = new CutJob(job.saw(), job.keep(), stock, parts, job.wishes());
            return new Rest(left, rows ? List.of() : renamed(), notes);
        }

        /** A part of a row that is begun cannot be cut in the row any more. */
        private CutPart apart(CutPart part, int again) {
            boolean row = !part.row().isEmpty() && broken.contains("row " + part.row());
            boolean side = !part.beside().isEmpty() && broken.contains("beside " + part.beside());
            if (!row && !side) {
                return part;
            }
            if (again > 0) {
                notes.add(
                        "%s was cut next to others so that the grain runs through: choose a place that goes with them."
                                .formatted(part.name()));
            }
            return part.inRow(row ? "" : part.row()).lyingBeside("");
        }

        /** Stock not yet begun stands in the new job with the number that is left of it. */
        private List<Begun> renamed() {
            return begun.stream()
                    .map(one -> inHand.contains(one.stock())
                            ? one
                            : new Begun(one.stock().left(opened.getOrDefault(one.stock(), 0)), one.tree()))
                    .toList();
        }
    }

    static OptionalInt fewer(OptionalInt count, int by) {
        return count.isPresent() ? OptionalInt.of(Math.max(0, count.getAsInt() - by)) : count;
    }
}
