package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.drawing.Drawing;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Setting;
import scantling.feature.SettingGroup;
import scantling.hardware.DrillingChart;
import scantling.measure.Once;

/** What the page templates ask of the work on parts. */
public final class WorkPages {
    private static final int CHARTED = 6;

    private final PacketContent content;
    private final Drawings drawings;
    private final Figures figures;
    private final Lettering letters;
    private final Map<String, Joint> joints = new LinkedHashMap<>();
    private final Map<String, Fitting> fittings = new LinkedHashMap<>();
    private final Map<String, List<Features.Choice>> choices;
    private final JointSizes sizes;
    private final Map<String, String> numbers = new LinkedHashMap<>();
    private final List<SettingRow> settings;
    private final Once<List<JointRow>> jointRows = Once.of(this::findJointRows);
    private final Once<List<FittingRow>> fittingRows = Once.of(this::findFittingRows);

    WorkPages(PacketContent content, Drawings drawings, Figures figures, Map<String, String> marks) {
        this.content = content;
        this.drawings = drawings;
        this.figures = figures;
        this.letters = new Lettering(marks);
        content.assembly().joints().forEach(joint -> joints.put(joint.path(), joint));
        content.assembly().fittings().forEach(fitting -> fittings.put(fitting.path(), fitting));
        this.sizes = new JointSizes(content.features(), figures);
        this.settings = settingRows();
        this.choices = content.features().choices().stream().collect(Collectors.groupingBy(Features.Choice::owner));
    }

    /**
     * A joint as a line of a list.
     *
     * @param path its name
     * @param kind how it is made
     * @param enters letter of the part that enters
     * @param receives letter of the part that receives
     * @param sizes as markup
     * @param why it is made so, with its numbers, as markup; empty when nothing was chosen
     */
    public record JointRow(String path, String kind, String enters, String receives, String sizes, String why) {}

    /**
     * Hardware as a line of a list.
     *
     * @param what it is
     * @param path its name
     * @param sizes what it needs, as markup
     * @param number how many to buy
     * @param why it is fixed so, as markup
     */
    public record FittingRow(String what, String path, String sizes, String number, String why) {}

    /**
     * A setting of a machine.
     *
     * @param number S1, S2 in the order of the list
     * @param machine with its tool
     * @param sizes what is dialled in, as markup
     * @param work what is made with it: 8 × slot in A1, A2, B
     * @param notes what else to know
     */
    public record SettingRow(String number, String machine, String sizes, String work, List<String> notes) {}

    /** One to a mark, but for the second hand of a pair. */
    public List<PartSheet> sheets() {
        List<PartGroup> drawn = Drawings.drawn(content.groups()).toList();
        return IntStream.range(0, drawn.size())
                .mapToObj(i -> sheet(drawn.get(i), drawings.parts().get(i)))
                .toList();
    }

    private PartSheet sheet(PartGroup group, Drawing drawing) {
        String self = group.sample().path();
        WorkTable table = new WorkTable(figures, owner -> purpose(owner, self), this::number);
        Set<String> used = group.work().stream()
                .map(work -> number(work.sample().setting()))
                .collect(Collectors.toSet());
        List<SettingRow> its =
                settings.stream().filter(row -> used.contains(row.number())).toList();
        return new PartSheet(group, drawing, table.rows(group.work()), its, chart(group));
    }

    /** Few holes are told well enough by the table of work. */
    private List<PartSheet.ChartRow> chart(PartGroup group) {
        List<Feature> features =
                group.work().stream().flatMap(work -> work.features().stream()).toList();
        List<DrillingChart.Row> rows =
                DrillingChart.of(group.sample(), features).rows();
        int holes = rows.stream().mapToInt(row -> row.holes().size()).sum();
        return holes < CHARTED ? List.of() : rows.stream().map(this::chartRow).toList();
    }

    private PartSheet.ChartRow chartRow(DrillingChart.Row row) {
        return new PartSheet.ChartRow(
                row.surface().words(),
                row.bit(),
                figures.of(row.depth()),
                figures.of(row.fence()),
                row.fenceAt().words(),
                row.from().words(),
                WorkTable.run(row.holes().stream().map(DrillingChart.Hole::at).toList(), figures));
    }

    private String number(Setting setting) {
        return numbers.getOrDefault(setting.key(), "");
    }

    /** The letter of the part on the other side of a joint, or what a fitting is. */
    private String purpose(String owner, String self) {
        Joint joint = joints.get(owner);
        if (joint != null) {
            return letters.mark(joint.entering().equals(self) ? joint.receiving() : joint.entering());
        }
        Fitting fitting = fittings.get(owner);
        return fitting == null ? owner : fitting.what();
    }

    /** Every setting once, in the order that changes least between two. */
    public List<SettingRow> settings() {
        return settings;
    }

    private List<SettingRow> settingRows() {
        List<SettingGroup> groups = SettingGroup.of(content.features().features());
        List<SettingRow> rows = new ArrayList<>();
        for (SettingGroup group : groups) {
            String number = "S" + (rows.size() + 1);
            numbers.put(group.setting().key(), number);
            rows.add(row(number, group));
        }
        return List.copyOf(rows);
    }

    private SettingRow row(String number, SettingGroup group) {
        String tool =
                group.setting().tool().isEmpty() ? "" : ", " + group.setting().tool();
        Stream<String> dialled = group.setting().sizes().entrySet().stream()
                .map(entry -> Figures.escape(entry.getKey()) + " " + figures.of(entry.getValue()));
        Stream<String> tilted = group.setting().angles().entrySet().stream()
                .map(entry -> Figures.escape(entry.getKey()) + " " + Setting.degrees(entry.getValue()));
        String sizes = Stream.concat(dialled, tilted)
                .collect(Collectors.joining(",</span> <span class=\"keep\">", "<span class=\"keep\">", "</span>"));
        List<String> notes = group.features().stream()
                .flatMap(feature -> feature.setting().notes().stream())
                .distinct()
                .toList();
        return new SettingRow(number, group.setting().machine() + tool, sizes, work(group), notes);
    }

    private String work(SettingGroup group) {
        Map<String, Long> kinds = new TreeMap<>(group.features().stream()
                .collect(Collectors.groupingBy(feature -> feature.kind().words(), Collectors.counting())));
        String what = kinds.entrySet().stream()
                .map(kind -> kind.getValue() + " × " + kind.getKey())
                .collect(Collectors.joining(", "));
        String where = group.features().stream()
                .map(Feature::part)
                .map(letters::mark)
                .distinct()
                .collect(Collectors.joining(", "));
        return what + " in " + where;
    }

    /** In building order; joints that are the same but for which of like parts they join are one line. */
    public List<JointRow> joints() {
        return jointRows.get();
    }

    private List<JointRow> findJointRows() {
        Map<List<String>, List<Joint>> alike = new LinkedHashMap<>();
        joints.values()
                .forEach(joint -> alike.computeIfAbsent(told(joint), key -> new ArrayList<>())
                        .add(joint));
        return alike.values().stream().map(this::row).toList();
    }

    private JointRow row(List<Joint> same) {
        Joint joint = same.get(0);
        String path = same.size() == 1 ? joint.path() : "%s; same for %d joints".formatted(joint.path(), same.size());
        return new JointRow(
                path,
                joint.kind().words(),
                marks(same, Joint::entering),
                marks(same, Joint::receiving),
                sizes.of(joint),
                why(joint.path(), sentence -> letters.of(sentence, joint)));
    }

    /** The mark of the part, or the letter that several like ones share: a narrow column holds no list. */
    private String marks(List<Joint> same, Function<Joint, String> part) {
        List<String> paths = same.stream().map(part).distinct().toList();
        return paths.size() == 1 ? letters.mark(paths.get(0)) : letters.letter(paths.get(0));
    }

    /** What a reader is told of a joint, in plain words and values; like parts have one letter. */
    private List<String> told(Joint joint) {
        List<String> told = new ArrayList<>(
                List.of(joint.kind().words(), letters.letter(joint.entering()), letters.letter(joint.receiving())));
        new TreeMap<>(joint.sizes()).forEach((name, dim) -> told.add(name + dim.value()));
        choices.getOrDefault(joint.path(), List.of()).forEach(choice -> told.add(letters.of(choice.sentence(), joint)));
        return told;
    }

    /** In building order; those that are the same but for where they are fixed are one line. */
    public List<FittingRow> fittings() {
        return fittingRows.get();
    }

    private List<FittingRow> findFittingRows() {
        Map<List<String>, List<Fitting>> alike = new LinkedHashMap<>();
        for (Fitting fitting : fittings.values()) {
            alike.computeIfAbsent(told(fitting), key -> new ArrayList<>()).add(fitting);
        }
        return alike.values().stream().map(this::fittingRow).toList();
    }

    private FittingRow fittingRow(List<Fitting> same) {
        Fitting fitting = same.get(0);
        int count = same.stream().mapToInt(Fitting::count).sum();
        return new FittingRow(
                fitting.what(),
                same.size() == 1 ? fitting.path() : "%s; same in %d places".formatted(fitting.path(), same.size()),
                figures.sizes(fitting.sizes()),
                count + " " + fitting.per() + (count == 1 ? "" : "s"),
                why(
                        fitting.path(),
                        sentence -> letters.of(sentence, same.size() == 1 ? letters::mark : letters::letter)));
    }

    /** What a reader is told of a fitting, in plain words and values. */
    private List<String> told(Fitting fitting) {
        List<String> told = new ArrayList<>(List.of(fitting.what(), fitting.per()));
        new TreeMap<>(fitting.sizes()).forEach((name, dim) -> told.add(name + dim.value()));
        choices.getOrDefault(fitting.path(), List.of())
                .forEach(choice -> told.add(letters.of(choice.sentence(), letters::letter)));
        return told;
    }

    private String why(String owner, UnaryOperator<String> words) {
        return choices.getOrDefault(owner, List.of()).stream()
                .map(choice -> Figures.escape(words.apply(choice.sentence())) + numbers(choice))
                .collect(Collectors.joining(" "));
    }

    /** On a screen each links to its sum; on paper the sentence says them. */
    private String numbers(Features.Choice choice) {
        return choice.numbers().isEmpty() || !figures.areLinked()
                ? ""
                : choice.numbers().stream().map(figures::of).collect(Collectors.joining(", ", " (", ")"));
    }
}
