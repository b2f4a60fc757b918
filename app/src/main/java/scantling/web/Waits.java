package scantling.web;

import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.shop.BenchEntry;
import scantling.shop.Logged;

/**
 * Waits that run: glue, stain, lacquer. Each is a note in the bench log whose subject is {@code wait / what} and whose text
 * is how long in minutes, so that it runs on through restarts; it is over when its time is, or when it is marked undone.
 */
final class Waits {
    /** How the subject of a wait begins. */
    static final String SUBJECT = "wait / ";

    /** A week: nothing in a workshop that a timer is set for takes longer. */
    static final int MOST_MINUTES = 7 * 24 * 60;

    private static final Pattern MINUTES = Pattern.compile("(\\d{1,5}) min(?: from (\\d{4}-[-0-9T:]{14}Z))?");
    /** For so long after its end a wait is still shown, as over, so that nobody misses it. */
    private static final Duration SHOWN_AFTER = Duration.ofHours(12);

    private static final int PERCENT = 100;

    private Waits() {}

    /** One that runs. @param what waits @param begun when @param time how long it takes */
    record Wait(String what, Instant begun, Duration time) {
        Instant ends() {
            return begun.plus(time);
        }

        HomeView.WaitLine line(String job, Instant now) {
            long gone = Duration.between(begun, now).toSeconds();
            int percent = (int) Math.max(0, Math.min(PERCENT, PERCENT * gone / Math.max(1, time.toSeconds())));
            return new HomeView.WaitLine(
                    what,
                    job,
                    begun.getEpochSecond(),
                    ends().getEpochSecond(),
                    Days.written(Duration.between(now, ends())) + " left",
                    percent);
        }
    }

    /** The entry that starts one. @param begun when, by the phone that may have waited for the network since */
    static BenchEntry start(String what, int minutes, Instant begun) {
        String from = begun.truncatedTo(ChronoUnit.SECONDS).toString();
        return new BenchEntry.Note(SUBJECT + what, "%d min from %s".formatted(minutes, from), Optional.empty());
    }

    /** Those that still run. */
    static List<Wait> running(List<Logged> log, Instant now) {
        return shown(log, now).stream()
                .filter(wait -> now.isBefore(wait.ends()))
                .toList();
    }

    /** Those that still run, or are over and nobody has said that they were seen. */
    static List<Wait> shown(List<Logged> log, Instant now) {
        Map<String, Wait> waits = new LinkedHashMap<>();
        for (Logged entry : log) {
            if (entry.inForce()) {
                follow(entry, waits);
            }
        }
        return waits.values().stream()
                .filter(wait -> now.isBefore(wait.ends().plus(SHOWN_AFTER)))
                .toList();
    }

    private static void follow(Logged logged, Map<String, Wait> waits) {
        String subject = logged.entry().subject();
        if (!subject.startsWith(SUBJECT)) {
            return;
        }
        String what = subject.substring(SUBJECT.length());
        if (logged.entry() instanceof BenchEntry.Undone) {
            waits.remove(what);
        } else if (logged.entry() instanceof BenchEntry.Note note) {
            Matcher minutes = MINUTES.matcher(note.text());
            if (minutes.matches()) {
                Duration time = Duration.ofMinutes(Integer.parseInt(minutes.group(1)));
                Instant begun = Optional.ofNullable(minutes.group(2))
                        .flatMap(Waits::instant)
                        .orElse(logged.at());
                waits.put(what, new Wait(what, begun, time));
            }
        }
    }

    private static Optional<Instant> instant(String said) {
        try {
            return Optional.of(Instant.parse(said));
        } catch (DateTimeParseException noMoment) {
            return Optional.empty();
        }
    }
}
