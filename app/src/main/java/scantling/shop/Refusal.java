package scantling.shop;

import java.util.List;
import scantling.piece.Problem;

/** Ends the taking of an act; everything it did so far is rolled back and the answer given. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Answer answer;

    Refusal(Answer answer) {
        super("", null, false, false);
        this.answer = answer;
    }

    static Refusal of(String sentence, String remedy) {
        return new Refusal(new Answer.Refused(sentence, remedy, List.of()));
    }

    static Refusal of(String sentence, List<Problem> problems) {
        return new Refusal(new Answer.Refused(sentence, "", problems));
    }

    Answer answer() {
        return answer;
    }
}
