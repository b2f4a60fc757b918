package scantling.feature;

/**
 * What is bought and put into a joint to hold it: dowels, biscuits, loose tenons, screws.
 *
 * @param owner path of the joint
 * @param what the trade's word for one of them
 * @param size as the maker reads it: {@code 8.0 x 40.0 mm}
 * @param count how many of them
 */
public record Fixing(String owner, String what, String size, int count) {
    /** Checks the count. */
    public Fixing {
        if (count < 1) {
            throw new IllegalArgumentException("There cannot be (%d) of (%s) in (%s).".formatted(count, what, owner));
        }
    }
}
