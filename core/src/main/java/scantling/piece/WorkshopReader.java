package scantling.piece;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/** Reads when a shop works and what it has only so much of. */
final class WorkshopReader {
    private static final List<DayOfWeek> WEEK =
            List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY);

    private static final Pattern ROOM = Pattern.compile("(\\d{1,4}(?:\\.\\d+)?) *(m2|m²|sq ft|ft2)");

    private final Problems problems;
    private final Map<DayOfWeek, List<Workshop.Hours>> hours = new EnumMap<>(DayOfWeek.class);
    private final Set<LocalDate> closed = new TreeSet<>();
    private final Map<Length, Integer> clamps = new TreeMap<>();
    private ZoneId zone = ZoneOffset.UTC;
    private int hands = 1;
    private OptionalInt benches = OptionalInt.empty();
    private OptionalInt spray = OptionalInt.empty();
    private OptionalInt drying = OptionalInt.empty();
    private OptionalDouble dryingRoom = OptionalDouble.empty();

    WorkshopReader(Problems problems) {
        this.problems = problems;
    }

    Workshop read(Node node) {
        if (node instanceof Node.Fields fields) {
            fields.entries().forEach(this::field);
        } else {
            problems.add(node.span(), "Here stands %s.".formatted(node.word()), "Write {hours: 8:00-12:00}.");
        }
        if (hours.values().stream().allMatch(List::isEmpty)) {
            problems.add(
                    node.span(),
                    "The shop never works: nothing can be put in time.",
                    "Say hours: 8:00-12:30, 13:00-17:00, or hours for at least one day of the week.");
        }
        return new Workshop(zone, hours, closed, hands, benches, clamps, spray, drying, dryingRoom);
    }

    private void field(Node.Entry entry) {
        Node value = entry.value();
        String key = entry.key().text();
        switch (key) {
            case "zone" -> zone(value);
            case "hours" -> hours(value).ifPresent(said -> WEEK.forEach(day -> hours.putIfAbsent(day, said)));
            case "closed" -> items(value).forEach(this::closed);
            case "hands" -> hands = count(value, 1).orElse(1);
            case "benches" -> benches = count(value, 1);
            case "clamps" -> clamps(value);
            case "spray places" -> spray = count(value, 0);
            case "drying places" -> drying = count(value, 0);
            case "drying room" -> dryingRoom = room(value);
            default -> day(entry);
        }
    }

    private void day(Node.Entry entry) {
        String word = entry.key().text().toUpperCase(Locale.ROOT);
        Optional<DayOfWeek> day = List.of(DayOfWeek.values()).stream()
                .filter(one -> one.name().equals(word))
                .findFirst();
        if (day.isEmpty()) {
            problems.add(
                    entry.key().span(),
                    "A shop has no %s.".formatted(Problems.quoted(entry.key().text())),
                    "Say zone, hours, a day of the week, closed, hands, benches, clamps, spray places, drying"
                            + " room or drying places.");
        } else if (text(entry.value()).equals("closed")) {
            hours.put(day.get(), List.of());
        } else {
            hours(entry.value()).ifPresent(said -> hours.put(day.get(), said));
        }
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    private static List<Node> items(Node node) {
        return node instanceof Node.Items items ? items.items() : List.of(node);
    }

    private void zone(Node node) {
        try {
            zone = ZoneId.of(text(node));
        } catch (DateTimeException noZone) {
            problems.add(node.span(), "%s is no time zone.".formatted(node.word()), "Write one such as Europe/Lisbon.");
        }
    }

    private Optional<List<Workshop.Hours>> hours(Node node) {
        List<String> parts = items(node).stream().map(WorkshopReader::text).toList();
        Optional<List<Workshop.Hours>> said = DayWords.hours(String.join(",", parts));
        if (said.isEmpty()) {
            problems.add(
                    node.span(),
                    "%s are no working hours.".formatted(node.word()),
                    "Write them in order and apart: 8:00-12:30, 13:00-17:00.");
        }
        return said;
    }

    private void closed(Node node) {
        DayWords.days(text(node))
                .ifPresentOrElse(
                        closed::addAll,
                        () -> problems.add(
                                node.span(),
                                "%s is no day and no stretch of days.".formatted(node.word()),
                                "Write 2026-12-24 or 2026-12-24 to 2027-01-02."));
    }

    private OptionalInt count(Node node, int least) {
        if (text(node).matches("\\d{1,3}") && Integer.parseInt(text(node)) >= least) {
            return OptionalInt.of(Integer.parseInt(text(node)));
        }
        problems.add(
                node.span(),
                "%s cannot be counted.".formatted(node.word()),
                "Write a whole number of %d or more.".formatted(least));
        return OptionalInt.empty();
    }

    /** Square metres; square feet are taken as they are defined, by the foot of 304.8 mm. */
    private OptionalDouble room(Node node) {
        Matcher said = ROOM.matcher(text(node));
        double number = said.matches() ? Double.parseDouble(said.group(1)) : 0;
        if (number > 0) {
            double foot = LengthReader.read("12", Unit.INCH).orElse(Length.ZERO).toMetres();
            return OptionalDouble.of(said.group(2).startsWith("m") ? number : number * foot * foot);
        }
        problems.add(
                node.span(),
                "%s is no room to dry in.".formatted(node.word()),
                "Write an area, all shelves together: 6 m2 or 60 sq ft.");
        return OptionalDouble.empty();
    }

    private void clamps(Node node) {
        List<Node.Entry> entries = node instanceof Node.Fields fields ? fields.entries() : new ArrayList<>();
        if (entries.isEmpty()) {
            problems.add(node.span(), "Here stands %s.".formatted(node.word()), "Write {600: 8, 1200: 6}.");
        }
        for (Node.Entry entry : entries) {
            Optional<Length> length =
                    LengthReader.read(entry.key().text(), Unit.MM).filter(Length::isPositive);
            if (length.isEmpty()) {
                problems.add(
                        entry.key().span(),
                        "%s is no length of a clamp."
                                .formatted(Problems.quoted(entry.key().text())),
                        "Write how far it opens: 600 or 24 in.");
            }
            OptionalInt count = count(entry.value(), 0);
            length.ifPresent(known -> count.ifPresent(number -> clamps.merge(known, number, Integer::sum)));
        }
    }
}
