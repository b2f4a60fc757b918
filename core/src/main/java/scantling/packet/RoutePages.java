package scantling.packet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.measure.LengthFormat;
import scantling.measure.Once;
import scantling.route.Caution;
import scantling.route.Operation;
import scantling.route.Pause;
import scantling.route.Route;
import scantling.route.glue.Closing;
import scantling.route.glue.Session;

/** What the page templates ask of the order of work. */
public final class RoutePages {
    private static final int MINUTES = 60;
    private static final int FEW = 8;

    private final Route route;
    private final LengthFormat format;
    private final UnaryOperator<String> marks;
    private final Once<List<Row>> rows = Once.of(this::allRows);
    private final Once<List<Go>> gluing = Once.of(this::findGluing);

    /** @param marks the letter of a part */
    RoutePages(Route route, LengthFormat format, UnaryOperator<String> marks) {
        this.route = route;
        this.format = format;
        this.marks = marks;
    }

    /**
     * An operation as a line of a list.
     *
     * @param number from 1
     * @param title what is done
     * @param parts letters of its parts
     * @param minutes likely minutes of hands, and their marks
     * @param then the pause after it; empty when there is none
     * @param how settings, supplies and cautions, a line each
     */
    public record Row(int number, String title, String parts, String minutes, String then, List<String> how) {
        /** Settings, supplies and cautions, one behind the other. */
        public String told() {
            return how.stream()
                    .map(line -> line.endsWith(".") ? line : line + ".")
                    .collect(Collectors.joining(" "));
        }
    }

    /**
     * Something put together in one go.
     *
     * @param heading what it makes
     * @param how clamps and time
     * @param closings what is put to what, a line each
     */
    public record Go(String heading, String how, List<String> closings) {}

    /** Everything that is done, in order. */
    public List<Row> rows() {
        return rows.get();
    }

    private List<Row> allRows() {
        return rows(route.operations());
    }

    /** Some of what is done, in the order given; numbers are those of the whole route. */
    List<Row> rows(List<Operation> some) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        route.operations().forEach(operation -> numbers.put(operation.id(), numbers.size() + 1));
        Map<String, Integer> told = new LinkedHashMap<>();
        return some.stream().map(operation -> row(operation, numbers, told)).toList();
    }

    private Row row(Operation operation, Map<String, Integer> numbers, Map<String, Integer> told) {
        int number = numbers.getOrDefault(operation.id(), 0);
        return new Row(
                number,
                operation.title(),
                letters(operation.parts()),
                minutes(operation),
                pause(operation.pause()),
                how(operation, numbers, told));
    }

    /** Hours of hands in all, in words. */
    public String hours() {
        return "About %.0f hours of hands, %.0f if all goes well, %.0f if nothing does."
                .formatted(
                        route.hands().likely() / MINUTES,
                        route.hands().low() / MINUTES,
                        route.hands().high() / MINUTES);
    }

    /** Glue-ups, then what is screwed together. */
    public List<Go> gluing() {
        return gluing.get();
    }

    private List<Go> findGluing() {
        Map<List<String>, List<Session>> alike = new LinkedHashMap<>();
        Stream.concat(route.order().sessions().stream(), route.order().fastened().stream())
                .forEach(session -> alike.computeIfAbsent(told(session), key -> new ArrayList<>())
                        .add(session));
        return alike.values().stream().map(this::together).toList();
    }

    /** The first as it is done, and the names of those done in the same way. */
    private Go together(List<Session> same) {
        Go first = go(same.get(0));
        if (same.size() == 1) {
            return first;
        }
        String others = same.stream().skip(1).map(Session::name).collect(Collectors.joining("; "));
        return new Go(first.heading(), first.how() + " In the same way: " + others + ".", first.closings());
    }

    /** What is done, but for the numbers of like parts and places. */
    private List<String> told(Session session) {
        Go go = go(session);
        List<String> told = new ArrayList<>(List.of(numberless(session.name()), go.how()));
        go.closings().forEach(line -> told.add(numberless(line)));
        return told;
    }

    private static String numberless(String words) {
        return words.replaceAll("\\d+", "");
    }

    /** With how many logged times stand behind them, where any do. */
    private static String minutes(Operation operation) {
        String logged = operation.observations() == 0 ? "" : ", %d logged".formatted(operation.observations());
        return "%.0f (%.0f to %.0f%s)"
                .formatted(
                        operation.hands().likely(),
                        operation.hands().low(),
                        operation.hands().high(),
                        logged);
    }

    /** Settings and supplies on a line each; a caution in full where it is first needed, later by that line's number. */
    private static List<String> how(Operation operation, Map<String, Integer> numbers, Map<String, Integer> told) {
        int number = numbers.getOrDefault(operation.id(), 0);
        List<String> lines = new ArrayList<>();
        if (!operation.settings().isEmpty()) {
            lines.add(String.join("; ", operation.settings()));
        }
        String supplies = operation.supplies().stream()
                .map(supply -> "%s: %.1f %s".formatted(supply.name(), supply.amount(), supply.unit()))
                .collect(Collectors.joining("; "));
        String ready = operation.after().stream()
                .map(id -> numbers.getOrDefault(id, 0))
                .sorted()
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        String both = Stream.of(supplies, ready.isEmpty() ? "" : "ready first: " + ready)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        if (!both.isEmpty()) {
            lines.add(both);
        }
        for (Caution caution : operation.cautions()) {
            Integer before = told.putIfAbsent(caution.sentence(), number);
            lines.add(before == null ? "Mind: " + caution.sentence() : "Mind what stands at " + before + ".");
        }
        return lines;
    }

    private static String pause(Pause pause) {
        if (pause.hours() == 0) {
            return "";
        }
        String closes = pause.closes().isPresent()
                ? ", not more than %.0f h".formatted(pause.closes().getAsDouble())
                : "";
        return pause.hours() < 1
                ? "%.0f min%s: %s".formatted(pause.hours() * MINUTES, closes, pause.why())
                : "%.0f h%s: %s".formatted(pause.hours(), closes, pause.why());
    }

    private String letters(Collection<String> parts) {
        List<String> all = parts.stream().map(marks).distinct().sorted().toList();
        return all.size() <= FEW
                ? String.join(", ", all)
                : String.join(", ", all.subList(0, FEW)) + " and %d more".formatted(all.size() - FEW);
    }

    private Go go(Session session) {
        String how = session.isGlueUp()
                ? "%d joints; %d clamps of %s and longer%s; %.0f minutes to the last clamp."
                        .formatted(
                                session.glued().size(),
                                session.clamps(),
                                format.formatWithUnit(session.clampLength()),
                                session.cauls() ? ", with cauls" : "",
                                session.minutes())
                : "Without glue.";
        return new Go(
                "%s %s".formatted(session.isGlueUp() ? "Glue" : "Put together", session.name()),
                how,
                session.closings().stream().map(this::line).toList());
    }

    private String line(Closing closing) {
        String first = closing.parts().size() == 1
                ? closing.parts().get(0)
                : closing.parts().stream().limit(2).collect(Collectors.joining(", "))
                        + more(closing.parts().size() - 2);
        return "%s (%s) toward the %s"
                .formatted(first, letters(closing.parts()), closing.toward().word());
    }

    private static String more(int count) {
        return count > 0 ? " and %d more, as one".formatted(count) : ", as one";
    }
}
