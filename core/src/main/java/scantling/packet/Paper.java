package scantling.packet;

/** A size of paper. */
public enum Paper {
    /** 210 by 297 mm. */
    A4("A4"),
    /** 8 1/2 by 11 in. */
    LETTER("letter");

    private final String css;

    Paper(String css) {
        this.css = css;
    }

    /** As a style sheet names it. */
    public String css() {
        return css;
    }
}
