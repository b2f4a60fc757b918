package scantling.piece;

import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Unit;

/** What becomes of a number that stands in a text: one the maker typed, or a usual one. */
interface Literals {
    /** The number as a length with its origin. */
    Dim of(Length value, Phrase phrase);

    /** The unit of numbers that name none. */
    Unit unit();

    /** What is being read, as a path: {@code top / overhang / front}. */
    String label();

    /** Typed by the maker. */
    record Written(String label, Unit unit) implements Literals {
        @Override
        public Dim of(Length value, Phrase phrase) {
            return Dim.given(value, label, phrase.text(), phrase.span());
        }
    }

    /** A usual size of the language. */
    record Usual(String label, String key, String source) implements Literals {
        /** Usual sizes are written in millimetres whatever the unit of the piece. */
        @Override
        public Unit unit() {
            return Unit.MM;
        }

        @Override
        public Dim of(Length value, Phrase phrase) {
            return Dim.lookedUp(value, "usual sizes", key, source);
        }
    }

    /** The same for something inside. */
    default Literals inside(String key) {
        String deeper = label().isEmpty() ? key : label() + " / " + key;
        return this instanceof Usual usual ? new Usual(deeper, usual.key, usual.source) : new Written(deeper, unit());
    }
}
