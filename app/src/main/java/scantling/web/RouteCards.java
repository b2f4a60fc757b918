package scantling.web;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.route.Caution;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.route.Supply;
import scantling.shop.Progress;
import scantling.web.BenchCard.Dial;
import scantling.web.BenchCard.First;
import scantling.web.BenchCard.Tick;
import scantling.web.BenchCard.Time;
import scantling.web.BenchCard.Told;

/** Cards for everything but the saw, one for each operation of the route. */
final class RouteCards {
    private static final int MINUTES = 60;
    private static final int MOST_SAID = 4;
    private static final Set<Step> MEASURED = Set.of(Step.FINAL_MILL, Step.CUT_TO_LENGTH, Step.MARK, Step.FIT);
    /** Where solid parts come to their width and thickness, and to their length. */
    private static final Set<Step> SIZED = Set.of(Step.FINAL_MILL, Step.CUT_TO_LENGTH);

    private static final Set<Step> AROUND = Set.of(Step.DRY_FIT, Step.GLUE_UP, Step.CLEAN_UP, Step.FIT);
    private static final Set<Step> TOGETHER =
            Set.of(Step.DRY_FIT, Step.GLUE_UP, Step.CLEAN_UP, Step.TAKE_APART, Step.REASSEMBLE);
    /** Done to the piece or a body of it at one stroke: a tick for every part would only be in the way. */
    private static final Set<Step> WHOLE = Set.of(
            Step.RECEIVE,
            Step.DRY_FIT,
            Step.GLUE_UP,
            Step.TAKE_APART,
            Step.FINISH,
            Step.REASSEMBLE,
            Step.CHECK,
            Step.PHOTOGRAPH,
            Step.WRAP,
            Step.DELIVER);

    private final BenchCards all;
    private final PartFigures figures;

    RouteCards(BenchCards all) {
        this.all = all;
        this.figures = new PartFigures(all);
    }

    BenchCard card(Operation operation) {
        Optional<Setting> setting = setting(operation);
        List<Dial> dials = new ArrayList<>(setting.map(this::dials).orElse(List.of()));
        if (operation.needs().clamps() > 0) {
            dials.add(new Dial("Clamps", Integer.toString(operation.needs().clamps()), ""));
            dials.add(all.dial("Each at least", operation.needs().clampLength()));
        }
        return new BenchCard(
                operation.id(),
                operation.step().words(),
                operation.title(),
                dials,
                told(operation, setting),
                TOGETHER.contains(operation.step()) ? all.apart(operation.parts(), operation.title()) : -1,
                WHOLE.contains(operation.step()) ? List.of() : ticks(operation),
                numbers(operation),
                new Time(
                        (int) Math.ceil(operation.hands().likely()),
                        pause(operation),
                        operation.pause().why()),
                "",
                "",
                all.progress().isDone(operation));
    }

    private static int pause(Operation operation) {
        return (int) Math.ceil(operation.pause().hours() * MINUTES);
    }

    /** The setting an operation is told by: the one with its parts and as many sizes, the notes in the same words. */
    private Optional<Setting> setting(Operation operation) {
        if (operation.step() != Step.JOINTS && operation.step() != Step.DRILL) {
            return Optional.empty();
        }
        LengthFormat own = LengthFormat.of(all.plan().assembly().piece().unit());
        Set<String> parts = new TreeSet<>(operation.parts());
        return all.plan().features().features().stream()
                .filter(feature -> parts.contains(feature.part()))
                .map(Feature::setting)
                .distinct()
                .filter(setting -> words(setting, own).equals(operation.settings())
                        && operation.title().contains(setting.machine()))
                .findFirst();
    }

    private static List<String> words(Setting setting, LengthFormat format) {
        List<String> words = new ArrayList<>();
        setting.sizes()
                .forEach((name, size) -> words.add("%s %s".formatted(name, format.formatWithUnit(size.value()))));
        setting.angles().forEach((name, angle) -> words.add("%s %s".formatted(name, Setting.degrees(angle))));
        words.addAll(setting.notes());
        return words;
    }

    private List<Dial> dials(Setting setting) {
        Stream<Dial> lengths = setting.sizes().entrySet().stream()
                .map(size -> all.dial(capital(size.getKey()), size.getValue().value()));
        Stream<Dial> angles = setting.angles().entrySet().stream()
                .map(angle -> new Dial(capital(angle.getKey()), Setting.degrees(angle.getValue()), ""));
        return Stream.concat(lengths, angles).toList();
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private Told told(Operation operation, Optional<Setting> setting) {
        List<String> notes = new ArrayList<>(setting.map(Setting::notes).orElseGet(() -> settings(operation)));
        operation.supplies().stream().map(RouteCards::words).forEach(notes::add);
        if (operation.step() == Step.RECEIVE) {
            notes.addAll(stock(operation));
        }
        List<First> first = SIZED.contains(operation.step()) ? all.first(operation.parts()) : List.of();
        return new Told(notes, cautions(operation), margin(operation), ready(operation), first);
    }

    /** The boards, sheets or sticks that are to be opened, alike ones in one line. */
    private List<String> stock(Operation operation) {
        Map<String, Long> pieces = all.plan().cuts().stream()
                .filter(group ->
                        operation.id().equals(Ledger.path(operation.step().words(), group.title())))
                .flatMap(group -> group.plan().used().stream())
                .map(piece -> piece.stock().name())
                .collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
        return pieces.entrySet().stream()
                .map(piece -> "%d × %s%s"
                        .formatted(
                                piece.getValue(),
                                piece.getKey(),
                                all.rack().find(piece.getKey()).isPresent() ? ", from the rack" : ""))
                .toList();
    }

    /** What the clamps' own figures say already is left out: those follow the units of the page. */
    private static List<String> settings(Operation operation) {
        return operation.settings().stream()
                .filter(words -> operation.needs().clamps() == 0 || !words.contains(" clamps, "))
                .toList();
    }

    private static String words(Supply supply) {
        double amount = supply.amount();
        String figure = amount >= 10 ? Long.toString(Math.round(amount)) : "%.1f".formatted(amount);
        return "%s: %s %s".formatted(capital(supply.name()), figure, supply.unit());
    }

    static List<String> cautions(Operation operation) {
        return operation.cautions().stream().map(Caution::sentence).toList();
    }

    /** What the plan says against it. */
    private List<String> margin(Operation operation) {
        Set<String> about = new LinkedHashSet<>(operation.parts());
        all.plan().assembly().openings().stream()
                .filter(opening -> opening.fills().stream().anyMatch(about::contains))
                .map(opening -> opening.path())
                .toList()
                .forEach(about::add);
        if (!MEASURED.contains(operation.step()) && !AROUND.contains(operation.step())) {
            return List.of();
        }
        return all.plan().findings().stream()
                .filter(finding -> isAbout(finding, about))
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .sorted(Comparator.comparing(Finding::severity))
                .map(finding -> "%s: %s %s"
                        .formatted(
                                capital(finding.severity().name().toLowerCase(Locale.ROOT)),
                                finding.sentence(),
                                finding.remedy())
                        .strip())
                .distinct()
                .limit(MOST_SAID)
                .toList();
    }

    private static boolean isAbout(Finding finding, Set<String> about) {
        return about.stream()
                .anyMatch(name ->
                        finding.subject().equals(name) || finding.subject().startsWith(name + Ledger.SEPARATOR));
    }

    private List<String> ready(Operation operation) {
        List<String> ready = new ArrayList<>();
        for (Operation other : all.plan().route().operations()) {
            if (operation.after().contains(other.id())) {
                if (!all.progress().isDone(other)) {
                    ready.add("First: " + other.title() + ".");
                } else if (pause(other) > 0) {
                    ready.add("%s: %s after it, %s."
                            .formatted(
                                    other.title(),
                                    Days.written(Duration.ofMinutes(pause(other))),
                                    other.pause().why()));
                }
            }
        }
        return ready;
    }

    private List<Tick> ticks(Operation operation) {
        return operation.parts().stream()
                .sorted(Comparator.comparing(all::marked))
                .map(path -> tick(operation, path))
                .toList();
    }

    private Tick tick(Operation operation, String path) {
        Part part = all.part(path);
        boolean cut = Progress.sizes(operation, part.material());
        return new Tick(
                cut ? path : Progress.subject(operation, path),
                path,
                all.called(path),
                cut,
                all.progress().isDone(operation, path),
                figures.of(operation.step(), part, cut),
                all.drawing(path));
    }

    /** The sizes of the parts, and of the openings that they must fit or stand around. */
    private List<String> numbers(Operation operation) {
        Set<String> names = new LinkedHashSet<>();
        boolean around = AROUND.contains(operation.step());
        if (!around && !MEASURED.contains(operation.step())) {
            return List.of();
        }
        all.plan().assembly().openings().stream()
                .filter(opening -> around
                        ? !opening.fills().isEmpty()
                        : opening.fills().stream().anyMatch(operation.parts()::contains))
                .forEach(opening -> List.of("width", "height", "depth")
                        .forEach(size -> names.add(Ledger.path(opening.path(), size))));
        for (String path : operation.parts()) {
            List.of("length", "width", "thickness").forEach(size -> names.add(Ledger.path(path, size)));
        }
        Map<String, ?> known = all.plan().assembly().names();
        names.retainAll(known.keySet());
        return List.copyOf(names);
    }
}
