package scantling.bench.trust;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Writes to a shop as a real page does, one act after another, each with a name of its own, and remembers what was answered.
 * An act that got no answer is sent again after the restart, as a phone would.
 */
final class Writer {
    private static final int SEE_OTHER = 400;

    private final String name;
    private final Hand hand;
    private final List<Wrote> answered = new ArrayList<>();
    private final List<Wrote> refused = new ArrayList<>();
    private Optional<Wrote> pending = Optional.empty();
    private final AtomicLong said = new AtomicLong();
    private int number;

    Writer(String name, long seed) {
        this.name = name;
        this.hand = new Hand(seed);
    }

    /** One act. @param id its name @param kind job, size or note @param words what it carries, found nowhere else */
    record Wrote(String id, String kind, String words) {}

    List<Wrote> answered() {
        return List.copyOf(answered);
    }

    List<Wrote> refused() {
        return List.copyOf(refused);
    }

    /** How many answers there were, yes or no; asked while it writes. */
    long said() {
        return said.get();
    }

    /** What was sent and not answered, if anything. */
    Optional<Wrote> pending() {
        return pending;
    }

    /** How it reaches the server. */
    interface Way {
        Caller open() throws IOException, InterruptedException;
    }

    /** Writes until the server is gone. @param job where sizes and notes go @return how many were answered this time */
    int writeUntilGone(Way way, String job) throws InterruptedException {
        int before = answered.size();
        try {
            Caller caller = way.open();
            String stamp = caller.stamp();
            while (!Thread.currentThread().isInterrupted()) {
                Wrote next = pending.orElseGet(this::next);
                pending = Optional.of(next);
                boolean yes = send(caller, stamp, job, next);
                pending = Optional.empty();
                (yes ? answered : refused).add(next);
                said.incrementAndGet();
            }
        } catch (IOException gone) {
            return answered.size() - before;
        }
        return answered.size() - before;
    }

    private Wrote next() {
        number++;
        String id = "%s-act-%06d".formatted(name, number);
        String kind = hand.oneIn(12) ? "job" : hand.oneIn(3) ? "size" : "note";
        return new Wrote(id, kind, id + (kind.equals("note") ? " " + "x".repeat(hand.below(2000)) : ""));
    }

    /** Notes of one page are numbered without a gap, so that they are taken in turn. */
    private long notes() {
        return answered.stream().filter(act -> act.kind().equals("note")).count();
    }

    private boolean send(Caller caller, String stamp, String job, Wrote act) throws IOException, InterruptedException {
        HttpResponse<String> answer = switch (act.kind()) {
            case "job" ->
                caller.form(
                        "/jobs", stamp, Map.of("from", "wall-shelf", "title", act.words(), "due", "", "act", act.id()));
            case "size" ->
                caller.form(
                        "/jobs/" + job + "/measured",
                        stamp,
                        Map.of(
                                "name",
                                "left side / width",
                                "size",
                                "1%s mm".formatted(90 + hand.below(9)),
                                "act",
                                act.id()));
            default ->
                caller.json(
                        "/jobs/" + job + "/bench/acts",
                        stamp,
                        "{\"queue\":\"queue%s\",\"acts\":[{\"id\":\"%s\",\"n\":%d,\"kind\":\"note\",\"subject\":\"\",\"text\":\"%s\"}]}"
                                .formatted(name, act.id(), notes() + 1, act.words()));
        };
        if (act.kind().equals("note")) {
            return answer.statusCode() == 200 && answer.body().contains("\"taken\":true,\"said\":\"\"");
        }
        return answer.statusCode() < SEE_OTHER;
    }
}
