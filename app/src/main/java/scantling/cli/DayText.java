package scantling.cli;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import scantling.construct.Finding;
import scantling.route.days.Agenda;
import scantling.route.schedule.Timetable;

/** An agenda in lines of text. */
final class DayText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final double PERCENT = 100;

    private DayText() {}

    static String day(LocalDate day) {
        return DAY.format(day);
    }

    static String day(ZonedDateTime moment) {
        return DAY.format(moment);
    }

    static String entry(Agenda.Entry entry) {
        boolean sameDay = entry.from().toLocalDate().equals(entry.to().toLocalDate());
        String to = sameDay ? TIME.format(entry.to()) : TIME.format(entry.to()) + " on " + day(entry.to());
        return "  %s to %s  %s: %s%s"
                .formatted(
                        TIME.format(entry.from()),
                        to,
                        entry.job(),
                        entry.operation().title(),
                        entry.begun() ? " (begun)" : "");
    }

    static String promise(Agenda.Promise promise) {
        StringBuilder text = new StringBuilder("%s: planned for %s. As likely earlier as later: %s. Nine in ten: %s."
                .formatted(promise.job(), day(promise.planned()), day(promise.even()), day(promise.safe())));
        for (Agenda.Driver driver : promise.drivers()) {
            text.append("%n    %.0f %% of the doubt goes with \"%s\""
                    .formatted(PERCENT * driver.share(), driver.operation()));
        }
        return text.toString();
    }

    static String finding(Finding finding) {
        return "%s: %s: %s Do: %s"
                .formatted(
                        finding.severity().name().toLowerCase(Locale.ROOT),
                        finding.subject(),
                        finding.sentence(),
                        finding.remedy());
    }

    static String status(Timetable timetable) {
        String found = switch (timetable.status()) {
            case FIRST -> "The first sound order; more search may better it.";
            case IMPROVED -> "Bettered by search; no proof that it is the best.";
            case BEST -> "No order ends earlier.";
        };
        return timetable.note().isEmpty() ? found : found + " " + timetable.note();
    }
}
