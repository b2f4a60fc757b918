package scantling.cutting;

import java.util.List;

/** Where patterns come from. */
interface PatternSource {
    /** How many kinds of part there are. */
    int kinds();

    /** What each kind of stock costs. */
    double[] cost();

    /** First prices at which no pattern is worth more than it costs: of each kind its share of the stock. */
    double[] fair();

    /** The pattern with as many of one kind as the stock that is best for it holds, and no more than wanted. */
    Pattern alone(int kind, int wanted);

    /** What each kind of stock holds at most, in value. */
    double[] values(double[] price, int[] most);

    /** A pattern of that value, right after {@link #values} with the same prices. */
    Pattern best(double[] price, int[] most, int type);

    /** Whether a pattern is of use where so much is wanted. */
    default boolean isUsable(Pattern pattern, int[] wanted) {
        return pattern.within(wanted);
    }

    /** More patterns met while that one was looked for, which may be worth having. */
    default List<Pattern> others() {
        return List.of();
    }
}
