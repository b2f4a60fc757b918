package scantling.finishing;

/** Who sees a face when the piece stands finished. */
public enum Seen {
    /** Anyone who walks round it. */
    SHOW("show"),
    /** Whoever opens it or looks into it. */
    INSIDE("inside"),
    /** Nobody: toward the wall or the floor, or covered by another part. */
    HIDDEN("hidden"),
    /** Nobody, and it must take glue. */
    GLUE("glue");

    private final String word;

    Seen(String word) {
        this.word = word;
    }

    /** The bench's word. */
    public String word() {
        return word;
    }
}
