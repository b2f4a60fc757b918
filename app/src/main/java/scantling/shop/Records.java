package scantling.shop;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Jobs, clients, supplies, settings and acts as rows and back. What does not read is an {@link IllegalArgumentException}. */
final class Records {
    private Records() {}

    static Row row(Client client) {
        return Row.empty()
                .with("id", client.id())
                .with("name", client.name())
                .with("contact", client.contact())
                .with("note", client.note());
    }

    static Client client(Row row) {
        return new Client(row.text("id"), row.text("name"), row.text("contact"), row.text("note"));
    }

    static Row row(Job job) {
        return Row.empty()
                .with("id", job.id())
                .with("title", job.title())
                .with("client", job.client())
                .with("due", job.due().map(LocalDate::toString).orElse(""))
                .with("price", Words.of(job.price()))
                .with("state", job.state().word())
                .with("revision", job.revision());
    }

    static Job job(Row row) {
        return new Job(
                row.text("id"),
                row.text("title"),
                row.text("client"),
                row.said("due").map(Records::date),
                Words.price(row.text("price")),
                Words.find(Job.State.values(), row.text("state")),
                Math.toIntExact(row.number("revision")));
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException noDate) {
            throw new IllegalArgumentException("(%s) is no date such as 2026-12-24.".formatted(text), noDate);
        }
    }

    static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException noInstant) {
            throw new IllegalArgumentException("(%s) is no moment in time.".formatted(text), noInstant);
        }
    }

    static Row row(Supply supply) {
        return Row.empty()
                .with("id", supply.id())
                .with("kind", Words.of(supply.kind()))
                .with("name", supply.name())
                .with("amount", supply.amount().toPlainString())
                .with("unit", supply.unit())
                .with("price", Words.of(supply.price()))
                .with("place", supply.place());
    }

    static Supply supply(Row row) {
        String amount = row.text("amount");
        if (!amount.matches("\\d{1,9}(\\.\\d{1,6})?")) {
            throw new IllegalArgumentException("(%s) is no amount.".formatted(amount));
        }
        return new Supply(
                row.text("id"),
                Words.find(Supply.Kind.values(), row.text("kind")),
                row.text("name"),
                new BigDecimal(amount),
                row.text("unit"),
                Words.price(row.text("price")),
                row.text("place"));
    }

    static Row row(Setting setting) {
        return Row.empty()
                .with("id", setting.id())
                .with("section", setting.section().word())
                .with("name", setting.name())
                .with("value", setting.value());
    }

    static Setting setting(Row row) {
        Section section = Words.find(Section.values(), row.text("section"));
        Setting setting = new Setting(section, row.text("name"), row.text("value"));
        Optional<String> fault = section.fault(setting);
        if (fault.isPresent() || !setting.id().equals(row.text("id"))) {
            throw new IllegalArgumentException(
                    "The setting (%s) cannot be (%s). %s".formatted(setting.id(), setting.value(), fault.orElse("")));
        }
        return setting;
    }

    static Recorded recorded(Row act) {
        return new Recorded(
                act.number("seq"),
                act.text("id"),
                act.text("device"),
                instant(act.text("at")),
                act.text("words"),
                act.text("job"),
                act.text("subject"),
                act.number("undone_by") != 0);
    }

    static Revision revision(Row revision, Row act) {
        return new Revision(
                revision.text("job"),
                Math.toIntExact(revision.number("number")),
                revision.text("text"),
                instant(act.text("at")),
                act.text("device"),
                act.text("words"));
    }

    static Logged logged(Row bench, Row act) {
        return new Logged(
                bench.number("seq"),
                act.text("id"),
                act.text("device"),
                instant(act.text("at")),
                BenchRows.entry(bench),
                act.number("undone_by") == 0);
    }
}
