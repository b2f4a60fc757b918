package scantling.packet;

import java.util.Arrays;
import java.util.Optional;

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

    /** The paper of that name: a4 or letter, in any case. */
    public static Optional<Paper> find(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }
}
