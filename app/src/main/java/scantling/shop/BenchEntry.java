package scantling.shop;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Length;

/** One thing that happened at the bench. Entries are only ever added; a later one may take back an earlier one. */
public sealed interface BenchEntry {
    /** What it is about: a part, an operation, a number. */
    String subject();

    /**
     * Rough pieces were sawn off a piece of stock.
     *
     * @param stock id of the piece in the rack; empty when it was bought for this and never lay there
     * @param parts what was sawn, for which parts
     * @param offcuts what goes back to the rack
     */
    record Sawn(Optional<String> stock, List<SawnPart> parts, List<OnHand> offcuts) implements BenchEntry {
        /** Takes its own copies. */
        public Sawn {
            parts = List.copyOf(parts);
            offcuts = List.copyOf(offcuts);
        }

        @Override
        public String subject() {
            return stock.orElse("");
        }
    }

    /** Rough pieces for a part. @param pieces how many of them; a glued-up blank takes several */
    record SawnPart(String part, Length length, Length width, int pieces) {}

    /**
     * A part was cut to size and keeps it.
     *
     * @param sizes its length, width or thickness as measured; the shop adds what the plan says at this moment for those
     *     not measured, so that a later plan cannot move them
     */
    record Cut(String part, Map<String, Length> sizes) implements BenchEntry {
        /** Takes its own copy. */
        public Cut {
            sizes = Map.copyOf(sizes);
        }

        @Override
        public String subject() {
            return part;
        }
    }

    /** An operation is done. */
    record Done(String operation) implements BenchEntry {
        @Override
        public String subject() {
            return operation;
        }
    }

    /** An operation is not done after all, or a part not cut. */
    record Undone(String subject) implements BenchEntry {}

    /** A number of the piece was measured. */
    record Measured(String name, Length size) implements BenchEntry {
        @Override
        public String subject() {
            return name;
        }
    }

    /** A part, or the rough piece for it, is no longer of use: another is to be cut. @param why may be empty */
    record Spoilt(String part, String why) implements BenchEntry {
        @Override
        public String subject() {
            return part;
        }
    }

    /** Something to remember. @param photo id of a photo */
    record Note(String subject, String text, Optional<String> photo) implements BenchEntry {}

    /** Time spent. @param minutes not negative */
    record Minutes(String subject, int minutes) implements BenchEntry {}
}
