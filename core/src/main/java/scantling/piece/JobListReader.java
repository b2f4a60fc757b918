package scantling.piece;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the jobs in hand:
 *
 * <pre>{@code
 * shop:
 *   zone: Europe/Lisbon
 *   hours: 8:00-12:30, 13:00-17:00
 *   saturday: 9:00-12:00
 *   closed: [2026-12-24 to 2027-01-02]
 *   benches: 2
 *   clamps: {600: 8, 1200: 6}
 * jobs:
 *   chest:
 *     piece: chest.yaml
 *     due: 2026-12-18
 *     priority: 2
 *     material: {cherry: 2026-11-30}
 *     done:
 *       receive and stack / core, birch plywood, 18.0 mm sheets: 2026-11-25 08:00 to 8:20
 * }</pre>
 */
public final class JobListReader {
    private static final int HIGHEST = 9;

    private final Problems problems = new Problems();

    private JobListReader() {}

    /** What became of reading. @param list there only when nothing is wrong @param problems everything that is wrong */
    public record Result(Optional<JobList> list, List<Problem> problems) {}

    /** Reads a text. */
    public static Result read(String text) {
        JobListReader reader = new JobListReader();
        Optional<JobList> list = YamlTree.read(text, reader.problems).flatMap(reader::root);
        List<Problem> wrong = reader.problems.list();
        return new Result(wrong.isEmpty() ? list : Optional.empty(), wrong);
    }

    /** Reads the bytes of a file. */
    public static Result readBytes(byte[] bytes) {
        PieceBytes read = PieceBytes.of(bytes);
        return read.text()
                .map(JobListReader::read)
                .orElseGet(() ->
                        new Result(Optional.empty(), read.problem().stream().toList()));
    }

    private Optional<JobList> root(Node root) {
        Map<String, Node> fields = new LinkedHashMap<>();
        entries(root, "\"shop\" and \"jobs\"")
                .forEach(entry -> fields.put(entry.key().text(), entry.value()));
        for (String key : fields.keySet()) {
            if (!key.equals("shop") && !key.equals("jobs")) {
                problems.add(
                        root.span(),
                        "%s does not belong to a list of jobs.".formatted(Problems.quoted(key)),
                        "Say \"shop\" and \"jobs\".");
            }
        }
        Node shop = fields.get("shop");
        Node jobs = fields.get("jobs");
        if (jobs == null) {
            problems.add(root.span(), "A list of jobs needs \"jobs\".", "Write jobs: {chest: {piece: chest.yaml}}.");
            return Optional.empty();
        }
        Optional<Workshop> workshop = Optional.ofNullable(shop).map(said -> new WorkshopReader(problems).read(said));
        List<JobList.Listed> all = new ArrayList<>();
        entries(jobs, "name: {piece: chest.yaml}").forEach(entry -> job(entry).ifPresent(all::add));
        if (all.isEmpty()) {
            problems.add(jobs.span(), "No job is in hand.", "Write at least one: chest: {piece: chest.yaml}.");
        }
        return Optional.of(new JobList(workshop, all));
    }

    private List<Node.Entry> entries(Node node, String expected) {
        if (node instanceof Node.Fields fields) {
            return fields.entries();
        }
        if (!node.isEmpty() && !(node instanceof Node.Refused)) {
            problems.add(node.span(), "Here stands %s.".formatted(node.word()), "Write %s.".formatted(expected));
        }
        return List.of();
    }

    private Optional<JobList.Listed> job(Node.Entry entry) {
        String piece = "";
        Optional<LocalDate> due = Optional.empty();
        int priority = 1;
        Map<String, LocalDate> arrives = new LinkedHashMap<>();
        Map<String, JobList.Done> done = new LinkedHashMap<>();
        for (Node.Entry field : entries(entry.value(), "{piece: chest.yaml, due: 2026-12-18}")) {
            switch (field.key().text()) {
                case "piece" -> piece = text(field.value());
                case "due" -> due = day(field.value());
                case "priority" -> priority = priority(field.value());
                case "material" -> material(field.value(), arrives);
                case "done" ->
                    entries(field.value(), "operation: 2026-11-25 08:00 to 8:20")
                            .forEach(one -> done(one, done));
                default ->
                    problems.add(
                            field.key().span(),
                            "A job has no %s."
                                    .formatted(Problems.quoted(field.key().text())),
                            "Say piece, due, priority, material or done.");
            }
        }
        if (piece.isBlank()) {
            problems.add(entry.key().span(), "The job has no piece.", "Name the file of its text: piece: chest.yaml.");
            return Optional.empty();
        }
        return Optional.of(new JobList.Listed(
                entry.key().text(),
                piece,
                due,
                priority,
                arrives,
                done,
                entry.key().span()));
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    private Optional<LocalDate> day(Node node) {
        Optional<LocalDate> day = DayWords.day(text(node));
        if (day.isEmpty()) {
            problems.add(node.span(), "%s is no day.".formatted(node.word()), "Write year, month and day: 2026-12-18.");
        }
        return day;
    }

    private int priority(Node node) {
        if (text(node).matches("[1-" + HIGHEST + "]")) {
            return Integer.parseInt(text(node));
        }
        problems.add(
                node.span(),
                "%s is no priority.".formatted(node.word()),
                "Write a number from 1, the usual, to %d.".formatted(HIGHEST));
        return 1;
    }

    private void material(Node node, Map<String, LocalDate> arrives) {
        if (node instanceof Node.Fields fields) {
            fields.entries()
                    .forEach(entry -> day(entry.value())
                            .ifPresent(day -> arrives.put(entry.key().text(), day)));
        } else {
            day(node).ifPresent(day -> arrives.put("", day));
        }
    }

    private void done(Node.Entry entry, Map<String, JobList.Done> done) {
        var ends = DayWords.stretch(text(entry.value()));
        if (ends.isEmpty()) {
            problems.add(
                    entry.value().span(),
                    "%s does not say when it was done.".formatted(entry.value().word()),
                    "Write 2026-11-25 08:00 to 8:20, or only when it was begun.");
            return;
        }
        List<LocalDateTime> both = ends.get();
        done.put(
                entry.key().text(),
                new JobList.Done(
                        both.get(0),
                        both.size() > 1 ? Optional.of(both.get(1)) : Optional.empty(),
                        entry.key().span()));
    }
}
