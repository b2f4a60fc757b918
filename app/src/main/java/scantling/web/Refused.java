package scantling.web;

/** A request that is not answered with what it asked for: told in one message for the maker, without a trace. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    static final int BAD = 400;
    static final int NOT_PAIRED = 401;
    static final int FORBIDDEN = 403;
    static final int NOT_THERE = 404;
    static final int CHANGED_MEANWHILE = 409;
    static final int TOO_LARGE = 413;
    static final int WRONG_KIND = 415;
    static final int WRONG_HOST = 421;
    static final int TOO_OFTEN = 429;

    private final int status;
    private final String remedy;

    /**
     * Refuses.
     *
     * @param status of the answer
     * @param sentence what is so
     * @param remedy what to do
     */
    Refused(int status, String sentence, String remedy) {
        super(sentence, null, false, false);
        this.status = status;
        this.remedy = remedy;
    }

    static Refused noSuch(String what) {
        return new Refused(NOT_THERE, "There is no such %s here.".formatted(what), "Go back to the jobs in hand.");
    }

    int status() {
        return status;
    }

    String sentence() {
        return String.valueOf(getMessage());
    }

    String remedy() {
        return remedy;
    }
}
