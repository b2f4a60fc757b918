package scantling.packet;

import java.util.ArrayList;
import java.util.Base64;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.drawing.Drawing;
import scantling.drawing.YearChart;
import scantling.finishing.Coat;
import scantling.finishing.Coating;
import scantling.finishing.FinishGroup;
import scantling.measure.Length;
import scantling.piece.Material;
import scantling.timber.Table;

/** What is handed to the client with the piece, and what the maker shows of it: sheets without prices. */
public final class ClientPages {
    private static final Table CARE = Table.read("packet/care.csv");
    private static final Set<String> STANDING = Set.of("tipping", "anchoring", "clothing storage");
    private static final int MOST_MOVING = 4;
    private static final int NAMED = 6;
    private static final double WIDE_MM = 100;

    private final PacketContent content;
    private final PaperFigures figures;
    private final Assembly assembly;
    private final Drawings drawings;

    private ClientPages(PacketContent content, Drawings drawings, PaperFigures figures) {
        this.content = content;
        this.drawings = drawings;
        this.figures = figures;
        this.assembly = content.assembly();
    }

    /** A heading with what stands under it. */
    public record Told(String heading, String text) {}

    /** What something may carry. @param what it is @param straight up to which it stays straight, or empty */
    public record Load(String what, String most, String straight, String why) {}

    /** A photograph. @param source of the picture, as the page takes it */
    public record Photo(String source, String caption) {}

    /** The sheet that goes with the piece, as PDF. */
    static byte[] handingOver(PacketContent content, Drawings drawings, Paper paper) {
        String foot = (content.job().shop() + "   " + content.assembly().piece().title()).strip();
        return pdf("handover.jte", content, drawings, paper, foot);
    }

    /** The record of how it was built, as PDF; it names nobody unless that was chosen. */
    static byte[] buildRecord(PacketContent content, Drawings drawings, Paper paper) {
        String by = content.shown().names() ? content.job().shop() + "   " : "";
        return pdf(
                "record.jte",
                content,
                drawings,
                paper,
                (by + content.assembly().piece().title()).strip());
    }

    private static byte[] pdf(String template, PacketContent content, Drawings drawings, Paper paper, String foot) {
        PaperFigures figures = new PaperFigures();
        ClientPages pages = new ClientPages(content, drawings, figures);
        return PacketPdf.render(Templates.render(template, pages, PacketPdf.css(foot, paper)), figures);
    }

    /** The piece. */
    public String title() {
        return assembly.piece().title();
    }

    /** For whom; nothing when the text names nobody. */
    public Optional<String> client() {
        return assembly.piece().client();
    }

    /** The workshop; may be empty. */
    public String shop() {
        return content.job().shop();
    }

    /** Whether the record may say who made it and for whom. */
    public boolean names() {
        return content.shown().names();
    }

    /** Overall size. */
    public String size() {
        return Stream.of(
                        assembly.piece().width(),
                        assembly.piece().depth(),
                        assembly.piece().height())
                .map(dim -> content.format().formatWithUnit(dim.value()))
                .collect(Collectors.joining(" × "));
    }

    /** From the front. */
    public Drawing front() {
        return drawings.front();
    }

    /** Whether the front leaves no room for words beside it. */
    public boolean isWide() {
        return drawings.front().paperWidth() > WIDE_MM;
    }

    /** Drawn apart, where one drawing holds all of it. */
    public Optional<Drawing> apart() {
        return drawings.exploded().size() == 1 ? Optional.of(drawings.exploded().get(0)) : Optional.empty();
    }

    /** A drawing as markup. */
    public String placed(Drawing drawing) {
        return figures.place(drawing);
    }

    /** Each material with what is made of it. */
    public List<Told> materials() {
        Map<String, Set<String>> by = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            Material material = part.material();
            String of = material.kind() == Material.Kind.SHEET ? material.of() : "solid " + material.of();
            by.computeIfAbsent(of, key -> new LinkedHashSet<>()).add(own(part.path()));
        }
        return by.entrySet().stream()
                .map(entry -> new Told(entry.getKey(), few(entry.getValue())))
                .toList();
    }

    private static String own(String path) {
        return path.substring(path.lastIndexOf('/') + 1).strip().replaceFirst(" \\d+$", "");
    }

    /** A path as one says it: front of drawer 3. */
    private static String spoken(String path) {
        String[] steps = path.split(" / ", -1);
        return steps.length == 1 ? path : steps[steps.length - 1] + " of " + steps[steps.length - 2];
    }

    private static String few(Collection<String> all) {
        return all.size() <= NAMED
                ? String.join(", ", all)
                : all.stream().limit(NAMED).collect(Collectors.joining(", ")) + " and more";
    }

    /** What is on which wood, in the order it was put on. */
    public List<Told> finish() {
        Map<String, Set<String>> by = new LinkedHashMap<>();
        content.finish()
                .groups()
                .forEach(group -> by.computeIfAbsent(coats(group), key -> new LinkedHashSet<>())
                        .add(group.name()));
        return by.entrySet().stream()
                .map(entry -> new Told(String.join(", ", entry.getValue()), entry.getKey()))
                .toList();
    }

    private static String coats(FinishGroup group) {
        Map<String, Long> coats = group.coatings().stream()
                .collect(Collectors.groupingBy(
                        coating -> coating.coat().name(), LinkedHashMap::new, Collectors.counting()));
        return coats.entrySet().stream()
                .map(coat -> coat.getValue() == 1 ? coat.getKey() : coat.getValue() + " coats of " + coat.getKey())
                .collect(Collectors.joining(", then "));
    }

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

    /** How many joints of each kind hold it together. */
    public String joints() {
        Map<String, Long> kinds = assembly.joints().stream()
                .map(Joint::kind)
                .filter(kind -> kind != Joint.Kind.CARRIED)
                .collect(Collectors.groupingBy(Joint.Kind::words, LinkedHashMap::new, Collectors.counting()));
        return kinds.entrySet().stream()
                .map(kind -> kind.getValue() + " × " + kind.getKey())
                .collect(Collectors.joining(", "));
    }

    /** What was done, in order, each kind once. */
    public String work() {
        return content.route().operations().stream()
                .map(operation -> operation.title().replaceFirst(":.*", "").toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(", then "));
    }

    /** Photographs that paper can take. */
    public List<Photo> photos() {
        return content.shown().pictures().stream()
                .map(picture -> new Photo(
                        "data:image/%s;base64,%s"
                                .formatted(
                                        picture.kind().equals("jpg") ? "jpeg" : picture.kind(),
                                        Base64.getEncoder().encodeToString(picture.bytes())),
                        picture.caption()))
                .toList();
    }

    private static List<String> said(String about, Collection<String> words) {
        return CARE.rows().stream()
                .filter(row -> row.text("about").equals(about) && words.contains(row.text("word")))
                .map(row -> row.text("says"))
                .toList();
    }
}
