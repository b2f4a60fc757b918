package scantling.shop;

/** The shop's folder or its file keeps the shop from going on: told in one message for the maker, without a trace. */
public final class ShopTrouble extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Kind kind;

    /** What sort of trouble it is. */
    public enum Kind {
        /** Another Scantling has the shop open. */
        IN_USE,
        /** The folder or the file cannot be written. */
        READ_ONLY,
        /** There is no room left. */
        DISK_FULL,
        /** The file is no longer whole; it is kept as it is. */
        DAMAGED,
        /** The file was written by a later Scantling. */
        TOO_NEW,
        /** What should be read in is wrong; nothing was taken. */
        BAD_IMPORT,
        /** Anything else that the file system or the database says. */
        OTHER
    }

    ShopTrouble(Kind kind, String message) {
        super(message, null, false, false);
        this.kind = kind;
    }

    /** For the maker: what is so and what to do. */
    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }

    /** What sort of trouble it is. */
    public Kind kind() {
        return kind;
    }
}
