package scantling.shop;

/** A shop whose file may be looked at and not written, as on a disk that turns read-only while it is open. */
public final class Closed {
    private Closed() {}

    /** From now on its database refuses every change, with the words it has for a file it may not write. */
    public static void forWriting(ShopStore store) {
        try {
            store.database().write(handle -> handle.execute("PRAGMA query_only = ON"));
        } catch (ShopTrouble refused) {
            // it stands at once, and refuses even the end of its own transaction
            if (refused.kind() != ShopTrouble.Kind.READ_ONLY) {
                throw refused;
            }
        }
    }
}
