package scantling.web;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.checks.FitCheck;
import scantling.checks.MeasureBefore;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.drawing.CutDrawing;
import scantling.drawing.CutSheet;
import scantling.drawing.Drawing;
import scantling.drawing.Exploded;
import scantling.drawing.PartDrawing;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.packet.Packet;
import scantling.packet.PacketContent;
import scantling.packet.PartGroup;
import scantling.plan.Plan;
import scantling.shop.Progress;
import scantling.stock.Rack;
import scantling.web.BenchCard.Dial;
import scantling.web.BenchCard.First;

/** What the makers of cards share: the plan, how far it is done, how figures are written, and drawings made once. */
final class BenchCards {
    private static final int MANY = 40;

    private final Plan plan;
    private final Progress progress;
    private final Rack rack;
    private final String job;
    private final LengthFormat format;
    private final PacketContent content;
    private final Map<String, PartGroup> groups = new LinkedHashMap<>();
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<MeasureBefore> before;
    private final List<Drawing> drawings = new ArrayList<>();
    private final Map<String, Integer> known = new LinkedHashMap<>();

    BenchCards(Plan plan, Progress progress, Rack rack, String job, LengthFormat format) {
        this.plan = plan;
        this.progress = progress;
        this.rack = rack;
        this.job = job;
        this.format = format;
        this.content = Packet.of(plan, format).content();
        content.groups().forEach(group -> group.paths().forEach(path -> groups.put(path, group)));
        plan.assembly().parts().forEach(part -> parts.put(part.path(), part));
        this.before = plan.problems().isEmpty() ? FitCheck.measureBefore(plan.assembly()) : List.of();
    }

    /** What to measure before any of some parts is cut; what the maker takes as it is, is not asked for again. */
    List<First> first(Collection<String> cut) {
        return before.stream()
                .filter(one -> one.parts().stream().anyMatch(cut::contains))
                .filter(one -> plan.findings().stream()
                        .anyMatch(said -> said.sentence().equals(one.finding().sentence())
                                && !said.remedy().startsWith(Finding.ACCEPTED)))
                .map(this::first)
                .toList();
    }

    private First first(MeasureBefore one) {
        String name = one.number().findPath().orElse(one.finding().subject());
        String marks = one.parts().stream().map(this::marked).distinct().collect(Collectors.joining(", "));
        return new First(
                name,
                "before you cut %s. It may be %s off, and %s is all there is to spare."
                        .formatted(marks, format.formatWithUnit(one.worst()), format.formatWithUnit(one.gap())));
    }

    /**
     * All cards of a plan.
     *
     * @param cards in the order of work
     * @param drawings what they show, by number
     */
    record Deck(List<BenchCard> cards, List<Drawing> drawings) {
        /** Takes its own copies. */
        public Deck {
            cards = List.copyOf(cards);
            drawings = List.copyOf(drawings);
        }
    }

    Deck deck() {
        SawCards saw = new SawCards(this);
        RouteCards route = new RouteCards(this);
        List<BenchCard> cards = new ArrayList<>();
        plan.route().operations().forEach(operation -> {
            switch (operation.step()) {
                case CROSSCUT, CUT_SHEETS, CUT_STICKS -> cards.addAll(saw.cards(operation));
                case RIP -> {
                    // Stands on the cards of the boards, where crosscuts and rips come as the saw plan has them.
                }
                default -> cards.add(route.card(operation));
            }
        });
        return new Deck(cards, drawings);
    }

    Plan plan() {
        return plan;
    }

    Progress progress() {
        return progress;
    }

    Rack rack() {
        return rack;
    }

    String job() {
        return job;
    }

    LengthFormat format() {
        return format;
    }

    Part part(String path) {
        Part part = parts.get(path);
        if (part == null) {
            throw new IllegalArgumentException("There is no part (%s).".formatted(path));
        }
        return part;
    }

    /** The fraction large; what is left over beside it stands small, with the unit. */
    Dial dial(String label, Length size) {
        if (!format.inches()) {
            return new Dial(label, format.format(size), "mm");
        }
        LengthFormat.Typeset set = format.typeset(size);
        return new Dial(label, set.figure(), set.rest().isEmpty() ? "in" : "in %s mm".formatted(set.rest()));
    }

    /** The mark of a part and its name; what is no part keeps its name. */
    String called(String path) {
        PartGroup group = groups.get(path);
        return group == null ? path : group.mark() + " " + path;
    }

    /** The mark of a part; a piece that is cut further is called by its label. */
    String marked(String name) {
        PartGroup group = groups.get(name);
        if (group != null) {
            return group.mark();
        }
        return name.matches("[\\d.]+") ? "piece " + name : name;
    }

    /** The drawing of a part with its marks. */
    int drawing(String path) {
        PartGroup group = groups.get(path);
        if (group == null) {
            return -1;
        }
        return known.computeIfAbsent("part " + group.mark(), key -> {
            String title = group.mark() + ", " + group.names();
            return add(PartDrawing.of(group.sample(), group.work(), title, format));
        });
    }

    /** Some parts drawn apart; none for so many that nobody could tell them from one another. */
    int apart(List<String> paths, String title) {
        if (paths.size() < 2 || paths.size() > MANY) {
            return -1;
        }
        return known.computeIfAbsent("apart " + paths, key -> {
            Map<String, String> marks = new LinkedHashMap<>();
            paths.forEach(path -> marks.put(path, marked(path)));
            return add(Exploded.of(paths.stream().map(this::part).toList(), marks, title));
        });
    }

    /** The drawing of the so many-th piece of stock over all saw plans. */
    int stock(int number) {
        CutSheet sheet = content.sheets().get(number);
        return known.computeIfAbsent("stock " + number, key -> add(CutDrawing.of(sheet, format)));
    }

    private int add(Drawing drawing) {
        drawings.add(drawing);
        return drawings.size() - 1;
    }
}
