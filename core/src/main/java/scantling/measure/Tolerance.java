package scantling.measure;

/**
 * How far off a size may come out when it is made or measured, and by what.
 *
 * @param halfRange the size lies within its value plus or minus this much; never negative
 * @param process what makes it so: {@code cut to a stop}, {@code planed}, {@code sheet as bought}
 */
public record Tolerance(Length halfRange, String process) {
    /** A number that no process makes: whatever is off in it comes from what it was worked out of. */
    public static final Tolerance NONE = new Tolerance(Length.ZERO, "worked out");

    /** Checks the sign. */
    public Tolerance {
        if (halfRange.isNegative()) {
            throw new IllegalArgumentException("A tolerance (%s) cannot be negative.".formatted(halfRange));
        }
    }

    /** Whether a process stands behind it. */
    public boolean isMade() {
        return halfRange.isPositive();
    }
}
