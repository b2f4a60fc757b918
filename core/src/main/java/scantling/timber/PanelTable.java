package scantling.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import scantling.measure.Length;

/** The kinds of sheet goods that are known, found by the words a maker uses for them. */
public final class PanelTable {
    private static final List<String> VENEERED = List.of("veneered", "faced", "veneer");
    private static final List<String> FILLERS = List.of("in", "with", "both", "sides", "faces", "by", "board");

    private static final class Standard {
        static final PanelTable TABLE = new PanelTable(panels(), SpeciesTable.standard());
    }

    private final List<Panel> panels;
    private final Names<Panel> names;
    private final SpeciesTable woods;

    private PanelTable(List<Panel> panels, SpeciesTable woods) {
        this.panels = panels;
        this.woods = woods;
        this.names = Names.of(panels, panel -> Stream.concat(Stream.of(panel.name()), panel.aliases().stream()));
    }

    /** The program's own table. */
    public static PanelTable standard() {
        return Standard.TABLE;
    }

    private static List<Panel> panels() {
        List<Table.Row> stiffness = Table.read("timber/panel-stiffness.csv").rows();
        return Table.read("timber/panels.csv").rows().stream()
                .map(row -> panel(row, stiffness))
                .toList();
    }

    private static Panel panel(Table.Row row, List<Table.Row> stiffness) {
        String name = row.text("name");
        List<Panel.Stiffness> byThickness = new ArrayList<>(stiffness.stream()
                .filter(each -> each.text("panel").equals(name))
                .map(Panel.Stiffness::of)
                .toList());
        row.findNumber("moe_gpa")
                .ifPresent(any ->
                        byThickness.add(new Panel.Stiffness(Length.ZERO, Length.mm(1000), any, any, row.source())));
        return new Panel(
                name,
                row.list("aliases"),
                name,
                row.text("kind"),
                Optional.empty(),
                row.findNumber("density_kg_m3"),
                byThickness,
                row.text("tolerance"),
                row.source(),
                row.verified(),
                row.text("note"));
    }

    /** All cores in the order of the table. */
    public List<Panel> all() {
        return panels;
    }

    /**
     * The sheet a maker means. {@code cherry-veneered MDF}, {@code MDF veneered in cherry} and {@code oak plywood} are a
     * core with a veneer; {@code birch plywood} is birch throughout.
     */
    public Optional<Panel> find(String name) {
        return names.find(name).or(() -> {
            List<String> words = Names.words(name).toList();
            int mark = IntStream.range(0, words.size())
                    .filter(i -> VENEERED.contains(words.get(i)))
                    .findFirst()
                    .orElse(-1);
            return mark < 0
                    ? faceBeforeCore(words)
                    : veneered(words.subList(0, mark), words.subList(mark + 1, words.size()));
        });
    }

    private Optional<Panel> veneered(List<String> before, List<String> after) {
        return core(after)
                .map(core -> core.veneered(veneer(before)))
                .or(() -> core(before).map(core -> core.veneered(veneer(after))));
    }

    private Optional<Panel> faceBeforeCore(List<String> words) {
        return IntStream.range(1, words.size())
                .filter(i -> woods.isKind(String.join(" ", words.subList(0, i))))
                .mapToObj(i ->
                        core(words.subList(i, words.size())).map(core -> core.veneered(veneer(words.subList(0, i)))))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Panel> core(List<String> words) {
        return names.find(String.join(" ", words));
    }

    private Panel.Veneer veneer(List<String> words) {
        String face = String.join(
                " ", words.stream().filter(word -> !FILLERS.contains(word)).toList());
        return new Panel.Veneer(face, woods.find(face));
    }

    /** Up to three known names that come nearest to one that is not known. */
    public List<String> nearest(String name) {
        return names.nearest(name);
    }
}
