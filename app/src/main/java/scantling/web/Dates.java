package scantling.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Days as forms send them. */
final class Dates {
    private Dates() {}

    /** A day such as 2026-12-24; nothing when nothing is said. */
    static Optional<LocalDate> read(String said) {
        if (said.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(said.strip()));
        } catch (DateTimeParseException noDay) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s\" is no day.".formatted(Requests.shown(said)),
                    "Write it as in 2026-12-24, or leave it out.");
        }
    }
}
