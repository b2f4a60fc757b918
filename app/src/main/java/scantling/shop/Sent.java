package scantling.shop;

/**
 * An act on its way to the shop. The same id sent again, after a dropped network or a restart, is answered as it was the
 * first time and changes nothing.
 *
 * @param id made by whoever sends it, and never used for another act
 * @param device who sends it
 * @param number the device's own count of its acts, from 1, taken strictly in turn; 0 when it does not count
 * @param act what is to be done
 */
public record Sent(String id, String device, long number, Act act) {
    /** The name by which the desk sends. */
    public static final String DESK = "desk";

    private static final int LONGEST_ID = 80;

    /** Checks that it has an id of reasonable length. */
    public Sent {
        if (id.isBlank() || id.length() > LONGEST_ID || device.length() > LONGEST_ID || number < 0) {
            throw new IllegalArgumentException(
                    "An act needs an id of at most %d characters (%s), a device (%s) and a count that is not negative (%d)."
                            .formatted(LONGEST_ID, id, device, number));
        }
    }

    /** From the desk, which waits for every answer and so need not count. */
    public static Sent fromDesk(String id, Act act) {
        return new Sent(id, DESK, 0, act);
    }
}
