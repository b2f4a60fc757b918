package scantling.timber;

import java.util.List;
import java.util.OptionalDouble;

/** A number worked out by a published formula, or why it cannot be. The unit is said by whoever gives it. */
public sealed interface Estimate {
    /**
     * A number.
     *
     * @param formula what gave it
     * @param cautions what to know before trusting it
     */
    record Known(double value, String formula, List<String> cautions) implements Estimate {
        /** Takes its own copy. */
        public Known {
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * No number.
     *
     * @param reason a sentence with the value that was refused and what is allowed
     */
    record Refused(String reason) implements Estimate {}

    /** The number if there is one. */
    default OptionalDouble find() {
        return this instanceof Known known ? OptionalDouble.of(known.value()) : OptionalDouble.empty();
    }

    /** Why there is no number, or what to know before trusting it; empty when there is nothing to say. */
    default List<String> remarks() {
        return this instanceof Known known ? known.cautions() : List.of(((Refused) this).reason());
    }

    /** A number without cautions. */
    static Estimate known(double value, String formula) {
        return new Known(value, formula, List.of());
    }
}
