package scantling.packet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import scantling.construct.Assembly;
import scantling.drawing.Code;
import scantling.drawing.CutSheet;
import scantling.drawing.Drawing;
import scantling.drawing.ProofLine;
import scantling.measure.Dim;
import scantling.measure.Once;
import scantling.piece.Material;
import scantling.piece.Piece;

/** What the page templates ask of a packet. Methods that give figures or sums give markup; all others give plain text. */
public final class PacketPage {
    private static final double CODE_MM = 11;

    private final PacketMatter matter;
    private final PacketContent content;
    private final Drawings drawings;
    private final Function<Drawing, String> placed;
    private final Assembly assembly;
    private final Figures figures;
    private final Set<String> only;
    private final Once<List<Section>> sections = Once.of(this::findSections);

    private PacketPage(PacketMatter matter, Function<Drawing, String> placed, Set<String> only) {
        this.matter = matter;
        this.placed = placed;
        this.only = only;
        this.content = matter.content();
        this.drawings = matter.drawings();
        this.assembly = content.assembly();
        this.figures = matter.figures();
    }

    /** On a screen, where figures link to their sums. */
    static PacketPage onScreen(PacketContent content, Drawings drawings) {
        return new PacketPage(new PacketMatter(content, drawings, true), Drawing::screenSvg, Set.of());
    }

    /** On paper. @param figures where its drawings are placed @param only the sections wanted, none for all */
    static PacketPage onPaper(PacketMatter matter, PaperFigures figures, Set<String> only) {
        return new PacketPage(matter, figures::place, only);
    }

    /** One section of the packet. @param id its anchor @param heading its name */
    public record Section(String id, String heading) {}

    /** A cutting diagram. @param drawing the diagram @param note what is said of the plan */
    public record CutPage(Drawing drawing, CutSheet sheet) {
        /** What can be said of the plan. */
        public String note() {
            return sheet.note();
        }
    }

    private Piece piece() {
        return assembly.piece();
    }

    /** The piece. */
    public String title() {
        return piece().title();
    }

    /** Whether figures are inches, with what is left over set small behind them. */
    public boolean isInch() {
        return content.format().inches();
    }

    /** Job number and piece. */
    public String heading() {
        return (job().number() + " " + title()).strip();
    }

    /** For whom, and of what. */
    public String subtitle() {
        String of = piece().materials().values().stream()
                .map(Material::of)
                .distinct()
                .collect(Collectors.joining(", "));
        return of + piece().client().map(client -> ", for " + client).orElse("");
    }

    /** Of the job. */
    public JobLines job() {
        return content.job();
    }

    /** Overall size and finish, as markup. */
    public String brief() {
        String size = "%s, %s wide, %s deep, %s high."
                .formatted(
                        Figures.escape(title()),
                        figure(piece().width()),
                        figure(piece().depth()),
                        figure(piece().height()));
        String finish = piece().finish().entrySet().stream()
                .map(step -> Figures.escape(step.getKey() + ": " + step.getValue()))
                .collect(Collectors.joining("; "));
        return finish.isEmpty() ? size : size + " Finish: " + finish + ".";
    }

    /** In the maker's order. */
    public List<Material> materials() {
        return List.copyOf(piece().materials().values());
    }

    /** A number as markup. */
    public String figure(Dim dim) {
        return figures.of(dim);
    }

    /** Front, section, side and from above. */
    public List<Drawing> views() {
        return drawings.views();
    }

    /** A code that opens a section on the phone, as markup; nothing when the job is served nowhere. @param id its anchor */
    public String code(String id) {
        return content.job()
                .address()
                .map(address -> "<div class=\"code\">" + placed(Code.of(address + "#" + id, CODE_MM)) + "</div>")
                .orElse("");
    }

    /** The views in rows. */
    public List<List<Drawing>> viewRows() {
        return drawings.rows();
    }

    /** What the hatches of the section mean. */
    public Optional<Drawing> legend() {
        return drawings.legend();
    }

    /** The piece drawn apart. */
    public List<Drawing> exploded() {
        return drawings.exploded();
    }

    /** A line that proves the scale of the print. */
    public Drawing proof() {
        return ProofLine.draw(content.format());
    }

    /** A drawing as markup. */
    public String placed(Drawing drawing) {
        return placed.apply(drawing);
    }

    /** How many pieces of wood. */
    public String pieceCount() {
        int count = assembly.parts().size();
        return count == 1 ? "1 piece" : count + " pieces";
    }

    /** Parts by material. */
    public List<StockRows> stocks() {
        return StockRows.of(content.groups());
    }

    /** The work on parts: their sheets, joints, fittings and machine settings. */
    public WorkPages work() {
        return matter.work();
    }

    /** The parts as sheets of paper hold them. */
    public List<PartsOnPaper.Printed> printed() {
        return PartsOnPaper.of(work().sheets(), content.format());
    }

    /** Everything that is done, in order. */
    public RoutePages route() {
        return matter.route();
    }

    /** The same, day by day. */
    public DayPages days() {
        return matter.days();
    }

    /** Whether it will last. */
    public LastingPages lasting() {
        return matter.lasting();
    }

    /** The mark of a part, or its path where it has none. */
    public String mark(String path) {
        return matter.mark(path);
    }

    /** Whether there is anything to say of rough wood and sheets. */
    public boolean hasTimber() {
        return !content.blanks().isEmpty() || !content.sheets().isEmpty();
    }

    /** Rough wood. */
    public List<BlankRow> blanks() {
        return content.blanks();
    }

    /** Cutting diagrams. */
    public List<CutPage> cutSheets() {
        return IntStream.range(0, content.diagrams().size())
                .mapToObj(i ->
                        new CutPage(drawings.cuts().get(i), content.diagrams().get(i)))
                .toList();
    }

    /** Findings that stand beside a section. */
    public List<MarginNote> notes(String section) {
        return matter.notes().stream()
                .filter(note -> note.section().equals(section))
                .toList();
    }

    /** All findings. */
    public List<MarginNote> allNotes() {
        return matter.notes();
    }

    /** The findings that stop the work. */
    public List<MarginNote> stops() {
        return matter.notes().stream()
                .filter(note -> note.style().equals("stop"))
                .toList();
    }

    /** Letters of the findings that concern a group of parts. */
    public MarginNote.Letters letters(PartGroup group) {
        return MarginNote.letters(matter.notes(), group.paths());
    }

    /** How many findings of each kind, with their letters; nothing when there are none. */
    public String tally() {
        return MarginNote.tally(matter.notes());
    }

    /** Every named number with the last step of its sum, by what it belongs to. */
    public List<SumChapter> sums() {
        return SumChapter.all(assembly, figures, new SumText(content.format()));
    }

    /** What the packet holds, in its order. */
    public List<Section> sections() {
        return sections.get();
    }

    private List<Section> findSections() {
        return PacketSections.words().stream()
                .filter(id -> (only.isEmpty() || only.contains(id)) && matter.has(id))
                .map(id -> new Section(id, PacketSections.heading(id)))
                .toList();
    }

    /** What is bought, and what goes on the wood. */
    public SupplyPages supplies() {
        return matter.supplies();
    }

    /** Whether a section is there and wanted. @param id its anchor */
    public boolean shows(String id) {
        return sections().stream().anyMatch(section -> section.id().equals(id));
    }
}
