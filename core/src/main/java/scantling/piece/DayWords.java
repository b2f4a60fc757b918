package scantling.piece;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads days, times and hours as a maker writes them: {@code 2026-12-18}, {@code 8:00-12:30}, {@code 2026-12-18 08:00}. */
final class DayWords {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm");

    private DayWords() {}

    static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    static Optional<LocalTime> time(String text) {
        try {
            return Optional.of(LocalTime.parse(text.strip(), TIME));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    static Optional<LocalDateTime> moment(String text) {
        String[] words = text.strip().split("[ T]+");
        return words.length == 2 ? day(words[0]).flatMap(day -> time(words[1]).map(day::atTime)) : Optional.empty();
    }

    /** {@code 2026-12-18 08:00 to 2026-12-18 09:30}, {@code 2026-12-18 08:00 to 9:30} or only when it was begun. */
    static Optional<List<LocalDateTime>> stretch(String text) {
        String[] ends = text.split("\\s+to\\s+", 2);
        Optional<LocalDateTime> from = moment(ends[0]);
        if (ends.length == 1 || from.isEmpty()) {
            return from.map(List::of);
        }
        LocalDate day = from.get().toLocalDate();
        return moment(ends[1])
                .or(() -> time(ends[1]).map(day::atTime))
                .filter(to -> to.isAfter(from.get()))
                .map(to -> List.of(from.get(), to));
    }

    /** {@code 8:00-12:30, 13:00-17:00}: in order and apart, or nothing. */
    static Optional<List<Workshop.Hours>> hours(String text) {
        List<Workshop.Hours> all = new ArrayList<>();
        LocalTime last = LocalTime.MIDNIGHT;
        for (String part : text.split(",")) {
            String[] ends = part.split("-", 2);
            Optional<LocalTime> from = time(ends[0]);
            Optional<LocalTime> to = ends.length < 2 ? Optional.empty() : time(ends[1]);
            if (from.isEmpty()
                    || to.isEmpty()
                    || from.get().isBefore(last)
                    || !to.get().isAfter(from.get())) {
                return Optional.empty();
            }
            all.add(new Workshop.Hours(from.get(), to.get()));
            last = to.get();
        }
        return Optional.of(all);
    }

    /** A day, or {@code 2026-12-24 to 2027-01-02}, at most a year. */
    static Optional<List<LocalDate>> days(String text) {
        String[] ends = text.split("\\s+to\\s+", 2);
        Optional<LocalDate> from = day(ends[0]);
        Optional<LocalDate> to = ends.length < 2 ? from : day(ends[1]);
        if (from.isEmpty()
                || to.isEmpty()
                || to.get().isBefore(from.get())
                || to.get().isAfter(from.get().plusYears(1))) {
            return Optional.empty();
        }
        return Optional.of(from.get().datesUntil(to.get().plusDays(1)).toList());
    }
}
