package scantling.shop;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A piece for a client.
 *
 * @param id short and fixed, made of its first title: {@code bedside-chest}
 * @param title what it is called
 * @param client id of the client; empty for none
 * @param due when it is promised
 * @param price what it is promised for, in the money of the shop
 * @param state where it stands
 * @param revision number of the text that counts
 */
public record Job(
        String id,
        String title,
        String client,
        Optional<LocalDate> due,
        Optional<Long> price,
        State state,
        int revision) {
    /** Where a job stands. */
    public enum State {
        /** Being planned or built. */
        IN_HAND,
        /** Built. */
        FINISHED,
        /** Out of sight; nothing of it is lost. */
        PUT_AWAY;

        /** In words: {@code in hand}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** The state of this word. */
        public static Optional<State> find(String word) {
            return Stream.of(values())
                    .filter(state -> state.word().equals(word))
                    .findFirst();
        }
    }

    /** The same in another state. */
    public Job in(State next) {
        return new Job(id, title, client, due, price, next, revision);
    }

    Job at(int number) {
        return new Job(id, title, client, due, price, state, number);
    }
}
