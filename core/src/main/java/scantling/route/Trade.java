package scantling.route;

/** Classes of operations: what an hour is charged by, and what estimate and log are compared by. */
public enum Trade {
    /** Stock in and stacked; ends cleaned, faces marked. */
    STOCK("stock and marking", false),
    /** Rough and final milling, sheets and sticks cut up. */
    MILLING("milling", true),
    /** Joints, holes, shapes. */
    JOINERY("joinery", true),
    /** Dry fits and glue-ups. */
    GLUING("glue-up", false),
    /** Sanding before glue, clean-up after it. */
    SANDING("sanding", false),
    /** Drawers, doors, lippings and hardware to their places. */
    FITTING("fitting", false),
    /** Coats, and what is between them. */
    FINISHING("finishing", false),
    /** Last check, photograph, wrapping, the road. */
    DELIVERY("delivery", false);

    private final String words;
    private final boolean atMachine;

    Trade(String words, boolean atMachine) {
        this.words = words;
        this.atMachine = atMachine;
    }

    /** What rates and cost sheets call it. */
    public String words() {
        return words;
    }

    /** Whether a machine runs while hands work, so that it is to be recovered by these hours. */
    public boolean atMachine() {
        return atMachine;
    }
}
