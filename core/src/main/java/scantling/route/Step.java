package scantling.route;

/** The kinds of things a maker does to a piece, in the order in which they usually come. */
public enum Step {
    /** Timber and sheets come in, are checked and stacked. */
    RECEIVE("receive and stack", Trade.STOCK),
    /** Boards to rough lengths. */
    CROSSCUT("crosscut rough", Trade.MILLING),
    /** Boards to rough widths. */
    RIP("rip", Trade.MILLING),
    /** One face and edge true, the other planed, all still over size. */
    FIRST_MILL("joint and plane", Trade.MILLING),
    /** Strips or layers to one blank. */
    GLUE_BLANK("glue up blanks", Trade.GLUING),
    /** To finished width and thickness, after rest. */
    FINAL_MILL("final mill", Trade.MILLING),
    /** Parts out of sheets. */
    CUT_SHEETS("cut sheets", Trade.MILLING),
    /** Parts out of sticks. */
    CUT_STICKS("cut sticks", Trade.MILLING),
    /** Solid parts to finished length. */
    CUT_TO_LENGTH("cut to length", Trade.MILLING),
    /** Ends planed or sanded clean. */
    CLEAN_ENDS("clean the ends", Trade.STOCK),
    /** Face side, face edge and near end. */
    MARK("mark faces", Trade.STOCK),
    /** Joints, one machine setting after the other. */
    JOINTS("cut joints", Trade.JOINERY),
    /** Holes for fittings. */
    DRILL("drill", Trade.JOINERY),
    /** Tapers, arches, rounded corners. */
    SHAPE("shape", Trade.JOINERY),
    /** Everything together without glue. */
    DRY_FIT("dry fit", Trade.GLUING),
    /** What the hand cannot reach later. */
    SAND_BEFORE("sand before glue", Trade.SANDING),
    /** A sub-assembly. */
    GLUE_UP("glue up", Trade.GLUING),
    /** Squeezed-out glue off, faces levelled. */
    CLEAN_UP("clean up", Trade.SANDING),
    /** Edging down to the panel. */
    FLUSH("flush lipping", Trade.FITTING),
    /** Drawers, doors and panels to the openings as measured. */
    FIT("fit", Trade.FITTING),
    /** Before finishing. */
    TAKE_APART("take apart", Trade.FITTING),
    /** Coats and what is between them. */
    FINISH("finish", Trade.FINISHING),
    /** Screwed together for good. */
    REASSEMBLE("reassemble", Trade.FITTING),
    /** Hinges, slides, handles. */
    HARDWARE("hardware", Trade.FITTING),
    /** Every size, gap and face once more. */
    CHECK("check", Trade.DELIVERY),
    /** For the maker's own book. */
    PHOTOGRAPH("photograph", Trade.DELIVERY),
    /** For the road. */
    WRAP("wrap", Trade.DELIVERY),
    /** To where it will stand. */
    DELIVER("deliver", Trade.DELIVERY);

    private final String words;
    private final Trade trade;

    Step(String words, Trade trade) {
        this.words = words;
        this.trade = trade;
    }

    /** The class of operations it is charged and compared under. */
    public Trade trade() {
        return trade;
    }

    /** What the bench calls it. */
    public String words() {
        return words;
    }
}
