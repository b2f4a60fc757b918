package scantling.shop;

/** A shop whose file may be looked at and not written, as on a disk that turns read-only while it is open. */
public final class Closed implements AutoCloseable {
    private final ShopStore store;

    private Closed(ShopStore store) {
        this.store = store;
    }

    /** From now on the database refuses every change, with the words it has for a file it may not write. */
    public static Closed forWriting(ShopStore store) {
        set(store, "ON");
        return new Closed(store);
    }

    private static void set(ShopStore store, String how) {
        store.database().write(handle -> handle.execute("PRAGMA query_only = " + how));
    }

    /** It may be written again. */
    @Override
    public void close() {
        set(store, "OFF");
    }
}
