package scantling.packet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.checks.lasting.Carrying;
import scantling.checks.lasting.LastingChecks;
import scantling.checks.lasting.Moving;
import scantling.checks.lasting.Say;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.drawing.Drawing;
import scantling.drawing.YearChart;
import scantling.finishing.Coat;
import scantling.finishing.Coating;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.timber.Table;

/** How one lives with a piece: its care, what it carries, how it moves, whether it is fixed to the wall. */
public final class LivingPages {
    private static final Table CARE = Table.read("packet/care.csv");
    private static final Set<String> STANDING = Set.of("tipping", "anchoring", "clothing storage");
    private static final int MOST_MOVING = 4;
    private static final int NAMED = 6;

    private final PacketContent content;
    private final Assembly assembly;

    LivingPages(PacketContent content) {
        this.content = content;
        this.assembly = content.assembly();
    }

    /** What something may carry. @param what it is @param straight up to which it stays straight, or empty */
    public record Load(String what, String most, String straight, String why) {}

    /** How it is looked after, a sentence each. */
    public List<String> care() {
        Set<String> says = new LinkedHashSet<>(said("care", List.of("always")));
        List<Coat> last = content.finish().groups().stream()
                .filter(group -> !group.coatings().isEmpty())
                .map(group -> group.coatings().get(group.coatings().size() - 1))
                .map(Coating::coat)
                .distinct()
                .toList();
        last.forEach(coat -> says.addAll(said("care", List.of(coat.binder()))));
        last.stream()
                .flatMap(coat -> coat.find("cure").stream())
                .max(Comparator.comparingDouble(cure -> cure.high()))
                .ifPresent(
                        cure -> says.add("The finish is dry to the touch long before it is hard: treat it gently, and"
                                + " lay nothing on it for long, for the first %.0f days.".formatted(cure.high())));
        return List.copyOf(says);
    }

    /** How what is screwed, hung or hooked is tightened again. */
    public List<String> tightening() {
        List<String> words = Stream.concat(
                        assembly.fittings().stream().map(Fitting::what),
                        assembly.joints().stream().map(joint -> joint.kind().words()))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .distinct()
                .toList();
        return CARE.rows().stream()
                .filter(row -> row.text("about").equals("tighten"))
                .filter(row -> words.stream().anyMatch(word -> word.contains(row.text("word"))))
                .map(row -> row.text("says"))
                .distinct()
                .toList();
    }

    /** What each shelf and drawer may carry. */
    public List<Load> loads() {
        return Carrying.of(assembly).stream()
                .map(carrying -> new Load(
                        few(carrying.parts()),
                        mass(carrying.kilograms()),
                        carrying.straight() < carrying.kilograms() ? mass(carrying.straight()) : "",
                        carrying.why()))
                .toList();
    }

    /** Down to what is surely borne. */
    private String mass(double kg) {
        return content.format().inches()
                ? "%.0f lb".formatted(Math.floor(kg * 2.2046226))
                : "%.0f kg".formatted(Math.floor(kg));
    }

    /** What is said of all loads. */
    public List<String> loading() {
        return said("carry", List.of("all"));
    }

    /** The year, where something moves in it. */
    public Optional<Drawing> year() {
        return YearChart.of(assembly, content.format());
    }

    /** How it moves with the seasons, sentences. */
    public List<String> seasons() {
        List<Moving> moving = LastingChecks.movements(assembly).stream()
                .sorted(Comparator.comparing((Moving each) -> each.range().value())
                        .reversed())
                .toList();
        if (moving.isEmpty()) {
            return List.of();
        }
        List<String> says = new ArrayList<>(said("season", List.of("solid")));
        Set<String> told = new LinkedHashSet<>();
        for (Moving each : moving) {
            if (told.size() < MOST_MOVING && told.add(own(each.part().path()))) {
                says.add("The %s, %s wide, is up to %s wider in the damp months than in the dry."
                        .formatted(
                                spoken(each.part().path()),
                                content.format()
                                        .formatWithUnit(each.part().width().value()),
                                say().near(length(each))));
            }
        }
        boolean fits = !assembly.openings().isEmpty();
        says.addAll(fits ? said("season", List.of("drawer")) : List.of());
        return says;
    }

    private Say say() {
        return new Say(content.format());
    }

    private static Length length(Moving moving) {
        return moving.range().value();
    }

    /** Whether it should be fixed to the wall, and why; nothing for a piece that stands by itself. */
    public List<String> anchoring() {
        List<Finding> standing = content.findings().stream()
                .filter(finding -> STANDING.contains(finding.rule()))
                .toList();
        if (standing.isEmpty()) {
            return List.of();
        }
        List<String> says = new ArrayList<>(said("anchor", List.of("tall")));
        standing.forEach(finding -> says.add(finding.sentence() + " " + finding.remedy()));
        return says;
    }

    static String own(String path) {
        return path.substring(path.lastIndexOf('/') + 1).strip().replaceFirst(" \\d+$", "");
    }

    /** A path as one says it: front of drawer 3. */
    private static String spoken(String path) {
        List<String> steps = Ledger.names(path);
        int last = steps.size() - 1;
        return last == 0 ? path : steps.get(last) + " of " + steps.get(last - 1);
    }

    static String few(Collection<String> all) {
        return all.size() <= NAMED
                ? String.join(", ", all)
                : all.stream().limit(NAMED).collect(Collectors.joining(", ")) + " and more";
    }

    private static List<String> said(String about, Collection<String> words) {
        return CARE.rows().stream()
                .filter(row -> row.text("about").equals(about) && words.contains(row.text("word")))
                .map(row -> row.text("says"))
                .toList();
    }
}
