package scantling.cli;

/** What a command answers the shell with. */
final class Exit {
    /** All is well. */
    static final int WELL = 0;
    /** A stop finding stands: do not cut yet. */
    static final int STOP = 1;
    /** The command, a file or the text is wrong, and nothing was written. */
    static final int WRONG = 2;

    private Exit() {}
}
