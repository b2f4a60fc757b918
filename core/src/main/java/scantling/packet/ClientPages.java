package scantling.packet;

import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.drawing.Drawing;
import scantling.finishing.FinishGroup;
import scantling.piece.Material;

/** What is handed to the client with the piece, and what the maker shows of it: sheets without prices. */
public final class ClientPages {
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
            by.computeIfAbsent(of, key -> new LinkedHashSet<>()).add(LivingPages.own(part.path()));
        }
        return by.entrySet().stream()
                .map(entry -> new Told(entry.getKey(), LivingPages.few(entry.getValue())))
                .toList();
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

    /** How one lives with it. */
    public LivingPages living() {
        return new LivingPages(content);
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

    /** What is said of photographs that paper cannot take; empty when there are none. */
    public String unprinted() {
        int count = content.shown().unprinted();
        return count == 0
                ? ""
                : "%d photograph%s of the log could not be printed: damaged, or too large."
                        .formatted(count, count == 1 ? "" : "s");
    }
}
