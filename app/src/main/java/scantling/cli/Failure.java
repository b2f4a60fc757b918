package scantling.cli;

/** Something outside the program keeps it from going on: told to the maker in one message, without a trace. */
final class Failure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Failure(String message) {
        super(message, null, false, false);
    }
}
