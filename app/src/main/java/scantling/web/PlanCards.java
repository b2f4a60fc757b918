package scantling.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Part;
import scantling.cutting.CutDirection;
import scantling.cutting.CutMarks;
import scantling.cutting.CutPiece;
import scantling.cutting.CutStep;
import scantling.drawing.CutDrawing;
import scantling.drawing.CutSheet;
import scantling.drawing.Drawing;
import scantling.drawing.PartDrawing;
import scantling.feature.Feature;
import scantling.feature.Setting;
import scantling.feature.SettingGroup;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.packet.Packet;
import scantling.packet.PacketContent;
import scantling.packet.PartGroup;
import scantling.piece.Material;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.web.BenchCard.Dial;
import scantling.web.BenchCard.Tick;

/** Cards from the plan alone: sawing by fence setting, milling, cutting to size, then machine work by setting. */
final class PlanCards implements BenchCards {
    private static final int SHOWN_NOTES = 3;

    private final Plan plan;
    private final LengthFormat format;
    private final PacketContent content;
    private final List<BenchCard> cards = new ArrayList<>();
    private final List<Drawing> drawings = new ArrayList<>();
    private final Map<String, PartGroup> groups = new LinkedHashMap<>();
    private final Map<String, Integer> partDrawings = new LinkedHashMap<>();

    PlanCards(Plan plan, LengthFormat format) {
        this.plan = plan;
        this.format = format;
        this.content = Packet.of(plan, format).content();
        content.groups().forEach(group -> group.paths().forEach(path -> groups.put(path, group)));
    }

    @Override
    public Deck deck() {
        if (cards.isEmpty()) {
            saw();
            content.groups().forEach(this::mill);
            content.groups().forEach(this::size);
            SettingGroup.of(plan.features().features()).forEach(this::machine);
        }
        return new Deck(cards, drawings);
    }

    private void saw() {
        int sheet = 0;
        for (CutGroup group : plan.cuts()) {
            for (CutPiece piece : group.plan().used()) {
                saw(group, piece, content.sheets().get(sheet++));
            }
        }
    }

    private void saw(CutGroup group, CutPiece piece, CutSheet sheet) {
        drawings.add(CutDrawing.of(sheet, format));
        int drawing = drawings.size() - 1;
        List<CutStep> run = new ArrayList<>();
        for (CutStep step : piece.steps()) {
            if (step.newSetting() && !run.isEmpty()) {
                saw(group, piece, run, drawing);
                run.clear();
            }
            run.add(step);
        }
        if (!run.isEmpty()) {
            saw(group, piece, run, drawing);
        }
    }

    private void saw(CutGroup group, CutPiece piece, List<CutStep> run, int drawing) {
        CutStep first = run.get(0);
        boolean along = first.direction() == CutDirection.ALONG;
        String told = run.stream()
                .map(step -> step.number() + " " + step.first() + " " + step.second())
                .collect(Collectors.joining("; "));
        String key = "saw / %s / %d / %s %s / %08x"
                .formatted(group.title(), piece.number(), along ? "rip" : "crosscut", first.fence(), told.hashCode());
        CutMarks marks = CutMarks.of(piece.steps());
        List<Tick> ticks = run.stream()
                .map(step -> new Tick(key + " / " + step.number(), words(step, marks), false))
                .toList();
        String title = "%s %s, %s %d of %d"
                .formatted(
                        along ? "Rip" : "Crosscut",
                        group.material().name(),
                        kind(group.material()),
                        piece.number(),
                        group.plan().used().size());
        cards.add(new BenchCard(
                key,
                "Saw",
                title,
                List.of(dial(along ? "Fence" : "Stop", first)),
                List.of("%s; %s.".formatted(group.title(), piece.stock().name())),
                drawing,
                ticks,
                List.of()));
    }

    private static String kind(Material material) {
        return switch (material.kind()) {
            case SOLID -> "board";
            case SHEET -> "sheet";
            case STICK -> "stick";
        };
    }

    private Dial dial(String label, CutStep step) {
        return new Dial(label, format.format(step.fence()), unit());
    }

    private String unit() {
        return format.inches() ? "in" : "mm";
    }

    private String words(CutStep step, CutMarks marks) {
        String from = marks.mark(step.piece());
        return step.isTrim()
                ? "Cut %d, %s: trim".formatted(step.number(), from)
                : "Cut %d, %s: %s and %s"
                        .formatted(step.number(), from, marked(step.first(), marks), marked(step.second(), marks));
    }

    /** The mark of a part; a piece that is cut further is called by its label. */
    private String marked(String name, CutMarks marks) {
        PartGroup group = groups.get(name);
        if (group != null) {
            return group.mark();
        }
        return CutMarks.isLabel(name) ? "piece " + marks.mark(name) : name;
    }

    private void mill(PartGroup group) {
        if (group.sample().material().kind() != Material.Kind.SOLID) {
            return;
        }
        List<String> notes = plan.blanks().stream()
                .filter(blank -> blank.part().equals(group.sample().path()))
                .flatMap(blank -> blank.notes().stream())
                .limit(SHOWN_NOTES)
                .toList();
        card("Mill", "mill / ", "Mill %s".formatted(called(group)), group, List.of("thickness"), notes, false);
    }

    private void size(PartGroup group) {
        List<String> notes = group.sample().fitted() ? List.of("Cut it to fit its place.") : List.of();
        card(
                "Cut to size",
                "size / ",
                "Cut %s to size".formatted(called(group)),
                group,
                List.of("length", "width"),
                notes,
                true);
    }

    private static String called(PartGroup group) {
        return group.mark() + ", " + group.names();
    }

    private void card(
            String stage,
            String head,
            String title,
            PartGroup group,
            List<String> sizes,
            List<String> notes,
            boolean cut) {
        Part part = group.sample();
        Map<String, Dim> all = Map.of("length", part.length(), "width", part.width(), "thickness", part.thickness());
        String key = head + String.join(", ", group.paths());
        List<Tick> ticks = group.paths().stream()
                .map(path -> new Tick(
                        cut ? path : key + " / " + path,
                        last(path) + " " + group.mark() + (group.count() > 1 ? ", " + first(path) : ""),
                        cut))
                .toList();
        List<Dial> dials = sizes.stream()
                .map(name -> new Dial(
                        capital(name),
                        format.format(all.getOrDefault(name, part.length()).value()),
                        unit()))
                .toList();
        cards.add(new BenchCard(
                key, stage, title, dials, notes, drawing(group), ticks, cut ? numbers(group) : List.of()));
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    /** What stands before the last step of a path. */
    private static String first(String path) {
        int end = path.lastIndexOf(Ledger.SEPARATOR);
        return end < 0 ? path : path.substring(0, end);
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf("/") + 1).strip();
    }

    /** The sizes of the parts, and of the openings that they must fit. */
    private List<String> numbers(PartGroup group) {
        Set<String> names = new LinkedHashSet<>();
        for (String path : group.paths()) {
            plan.assembly().openings().stream()
                    .filter(opening -> opening.fills().contains(path))
                    .forEach(opening -> List.of("width", "height", "depth")
                            .forEach(size -> names.add(Ledger.path(opening.path(), size))));
            List.of("length", "width", "thickness").forEach(size -> names.add(Ledger.path(path, size)));
        }
        names.retainAll(plan.assembly().names().keySet());
        return List.copyOf(names);
    }

    private int drawing(PartGroup group) {
        return partDrawings.computeIfAbsent(group.mark(), mark -> {
            drawings.add(PartDrawing.of(group.sample(), group.work(), called(group), format));
            return drawings.size() - 1;
        });
    }

    private void machine(SettingGroup work) {
        Map<String, List<Feature>> byPart = new LinkedHashMap<>();
        work.features()
                .forEach(feature -> byPart.computeIfAbsent(feature.part(), part -> new ArrayList<>())
                        .add(feature));
        String key = "machine / " + work.setting().key();
        List<Tick> ticks = byPart.entrySet().stream()
                .map(part -> new Tick(key + " / " + part.getKey(), told(part.getKey(), part.getValue()), false))
                .toList();
        Stream<Dial> lengths = work.setting().sizes().entrySet().stream()
                .map(size -> new Dial(
                        capital(size.getKey()), format.format(size.getValue().value()), unit()));
        Stream<Dial> angles = work.setting().angles().entrySet().stream()
                .map(angle -> new Dial(capital(angle.getKey()), Setting.degrees(angle.getValue()), ""));
        List<Dial> dials = Stream.concat(lengths, angles).toList();
        String tool =
                work.setting().tool().isEmpty() ? "" : ", " + work.setting().tool();
        PartGroup sample = groups.get(work.features().get(0).part());
        cards.add(new BenchCard(
                key,
                capital(work.setting().machine()),
                capital(work.setting().machine()) + tool,
                dials,
                work.setting().notes().stream().distinct().limit(SHOWN_NOTES).toList(),
                sample == null ? -1 : drawing(sample),
                ticks,
                List.of()));
    }

    private String told(String part, List<Feature> features) {
        Map<String, Long> kinds = features.stream()
                .collect(Collectors.groupingBy(
                        feature -> feature.kind().words(), LinkedHashMap::new, Collectors.counting()));
        String work = kinds.entrySet().stream()
                .map(kind -> kind.getValue() == 1 ? kind.getKey() : kind.getValue() + " × " + kind.getKey())
                .collect(Collectors.joining(", "));
        PartGroup group = groups.get(part);
        return (group == null ? "" : group.mark() + " ") + part + ": " + work;
    }
}
