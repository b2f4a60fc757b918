package scantling.route;

/** The kinds of things a maker does to a piece, in the order in which they usually come. */
public enum Step {
    /** Timber and sheets come in, are checked and stacked. */
    RECEIVE("receive and stack"),
    /** Boards to rough lengths. */
    CROSSCUT("crosscut rough"),
    /** Boards to rough widths. */
    RIP("rip"),
    /** One face and edge true, the other planed, all still over size. */
    FIRST_MILL("joint and plane"),
    /** Strips or layers to one blank. */
    GLUE_BLANK("glue up blanks"),
    /** To finished width and thickness, after rest. */
    FINAL_MILL("final mill"),
    /** Parts out of sheets. */
    CUT_SHEETS("cut sheets"),
    /** Parts out of sticks. */
    CUT_STICKS("cut sticks"),
    /** Solid parts to finished length. */
    CUT_TO_LENGTH("cut to length"),
    /** Ends planed or sanded clean. */
    CLEAN_ENDS("clean the ends"),
    /** Face side, face edge and near end. */
    MARK("mark faces"),
    /** Joints, one machine setting after the other. */
    JOINTS("cut joints"),
    /** Holes for fittings. */
    DRILL("drill"),
    /** Tapers, arches, rounded corners. */
    SHAPE("shape"),
    /** Everything together without glue. */
    DRY_FIT("dry fit"),
    /** What the hand cannot reach later. */
    SAND_BEFORE("sand before glue"),
    /** A sub-assembly. */
    GLUE_UP("glue up"),
    /** Squeezed-out glue off, faces levelled. */
    CLEAN_UP("clean up"),
    /** Edging down to the panel. */
    FLUSH("flush lipping"),
    /** Drawers, doors and panels to the openings as measured. */
    FIT("fit"),
    /** Before finishing. */
    TAKE_APART("take apart"),
    /** Coats and what is between them. */
    FINISH("finish"),
    /** Screwed together for good. */
    REASSEMBLE("reassemble"),
    /** Hinges, slides, handles. */
    HARDWARE("hardware"),
    /** Every size, gap and face once more. */
    CHECK("check"),
    /** For the maker's own book. */
    PHOTOGRAPH("photograph"),
    /** For the road. */
    WRAP("wrap"),
    /** To where it will stand. */
    DELIVER("deliver");

    private final String words;

    Step(String words) {
        this.words = words;
    }

    /** What the bench calls it. */
    public String words() {
        return words;
    }
}
