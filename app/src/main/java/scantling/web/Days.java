package scantling.web;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and stretches of time in words. */
final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMMM", Locale.UK);
    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMMM, HH:mm", Locale.UK);

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

    private Days() {}

    /** Fri 6 March. */
    static String written(LocalDate day) {
        return DAY.format(day);
    }

    /** Friday 6 March. */
    static String inFull(LocalDate day) {
        return LONG_DAY.format(day);
    }

    /** Fri 6 March, 09:12. */
    static String written(ZonedDateTime moment) {
        return MOMENT.format(moment);
    }

    /** 09:12. */
    static String hour(ZonedDateTime moment) {
        return HOUR.format(moment);
    }

    /** 2 h 20, 45 min. */
    static String written(Duration time) {
        long minutes = Math.max(0, time.toMinutes());
        if (minutes < 60) {
            return minutes + " min";
        }
        long rest = minutes % 60;
        return minutes / 60 + " h" + (rest == 0 ? "" : " %02d".formatted(rest));
    }
}
