package scantling.checks.frame;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import scantling.checks.lasting.Parts;
import scantling.checks.lasting.Section;
import scantling.checks.lasting.Stiffness;
import scantling.checks.lasting.Woods;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Side;

/**
 * A piece as a frame: every bearing part a line of bars, every joint between two of them a link, every bracing sheet held
 * at its corners, every foot on the floor.
 */
final class Model {
    /** Parts this near to the lowest stand on the floor, mm. */
    private static final double LEVEL = 1;

    private final Structure structure;
    private final Stiffness stiffness = new Stiffness(Woods.standard());
    private final Rigidities rigidities = new Rigidities(Woods.standard());
    private final Map<String, Rod> rods = new LinkedHashMap<>();
    private final List<Vector> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final Map<String, Link> links = new LinkedHashMap<>();
    private final Set<Integer> held = new HashSet<>();
    private final Map<Integer, Part> feet = new LinkedHashMap<>();
    private final List<Part> unknown = new ArrayList<>();

    private Model(Assembly assembly) {
        this.structure = new Structure(assembly);
    }

    /** The frame of a piece, as far as its parts are joined to what stands on the floor. */
    static Model of(Assembly assembly) {
        Model model = new Model(assembly);
        model.standing().forEach(part -> model.rods.put(part.path(), new Rod(part, model.structure.runs(part))));
        model.wantNodes();
        model.rods.values().forEach(rod -> rod.make(model.nodes));
        model.rods.values().forEach(model::bars);
        model.structure.links().forEach(model::link);
        model.structure.braces().forEach(model::brace);
        model.standOnFloor();
        return model;
    }

    /** Bars that joints connect with a bar on the floor, in building order. */
    private List<Part> standing() {
        double floor = structure.bars().values().stream()
                .mapToDouble(Model::bottom)
                .min()
                .orElse(0);
        Set<String> reached = new HashSet<>();
        List<Part> open = new ArrayList<>();
        structure.bars().values().stream()
                .filter(part -> bottom(part) <= floor + LEVEL)
                .filter(part -> reached.add(part.path()))
                .forEach(open::add);
        for (int i = 0; i < open.size(); i++) {
            Part part = open.get(i);
            structure.joints(part).stream()
                    .map(each -> each.other(part))
                    .filter(structure::isBar)
                    .filter(other -> reached.add(other.path()))
                    .forEach(open::add);
        }
        return structure.bars().values().stream()
                .filter(part -> reached.contains(part.path()))
                .filter(this::isPartOfAFrame)
                .toList();
    }

    /** What stands by itself is no part of a frame; but where nothing is joined at all, its uprights are all there is. */
    private boolean isPartOfAFrame(Part part) {
        return structure.links().isEmpty()
                ? structure.runs(part) == Axis.UP
                : structure.joints(part).stream().map(each -> each.other(part)).anyMatch(structure::isBar);
    }

    private static double bottom(Part part) {
        return Parts.mm(part.box().bottom());
    }

    private void wantNodes() {
        rods.values().forEach(Rod::wantMiddle);
        for (Structure.Joined each : structure.links()) {
            findRod(each.entering()).ifPresent(rod -> rod.want(each.patch().place()));
            findRod(each.receiving()).ifPresent(rod -> rod.want(each.patch().place()));
        }
        for (Part sheet : structure.braces()) {
            for (Structure.Joined each : structure.joints(sheet)) {
                corners(sheet).forEach(corner -> findRod(each.other(sheet)).ifPresent(rod -> rod.want(corner)));
            }
        }
    }

    Optional<Rod> findRod(Part part) {
        return Optional.ofNullable(rods.get(part.path()));
    }

    private void bars(Rod rod) {
        OptionalDouble elasticity = stiffness.find(rod.part(), rod.runs());
        OptionalDouble grain = stiffness.find(rod.part(), rod.part().lie().length());
        if (elasticity.isEmpty() || grain.isEmpty()) {
            unknown.add(rod.part());
            return;
        }
        double rigidity = rigidities.find(rod.part()).orElse(Section.rigidity(grain.getAsDouble()));
        members.addAll(rod.bars(nodes, elasticity.getAsDouble(), rigidity));
    }

    private void link(Structure.Joined each) {
        Optional<Rod> one = findRod(each.entering());
        Optional<Rod> other = findRod(each.receiving());
        Patch patch = each.patch();
        OptionalDouble behind = stiffness.find(each.receiving(), patch.into());
        if (one.isEmpty() || other.isEmpty() || behind.isEmpty()) {
            return;
        }
        double depth = Parts.mm(each.receiving().box().extent(patch.into()));
        double give = Joinings.of(each.joint().kind()).held() * through(each.receiving(), patch.into(), behind) / depth;
        double shift = give * patch.area();
        Vector turn = Vector.ZERO
                .with(patch.first(), shift * square(patch.secondSize()) / 12)
                .with(patch.second(), shift * square(patch.firstSize()) / 12)
                .with(patch.into(), shift * (square(patch.firstSize()) + square(patch.secondSize())) / 12);
        int first = one.get().nearest(patch.place());
        int second = other.get().nearest(patch.place());
        Link link = new Link(
                each.joint().path(),
                first,
                second,
                patch.place().minus(nodes.get(first)),
                patch.place().minus(nodes.get(second)),
                new Vector(shift, shift, shift),
                turn);
        members.add(link);
        links.put(each.joint().path(), link);
    }

    /** Through its thickness a sheet gives as solid wood does across the grain. */
    private double through(Part part, Axis into, OptionalDouble along) {
        boolean thick = !Parts.isSolid(part) && part.lie().thickness() == into;
        return along.getAsDouble() * (thick ? Stiffness.acrossShare() : 1);
    }

    private static double square(double number) {
        return number * number;
    }

    private void brace(Part sheet) {
        OptionalDouble rigidity = rigidities.find(sheet);
        List<Structure.Joined> held = structure.joints(sheet).stream()
                .filter(each -> rods.containsKey(each.other(sheet).path()))
                .toList();
        boolean both =
                held.stream().map(each -> each.other(sheet).path()).distinct().count() >= 2;
        if (rigidity.isEmpty() || !both) {
            return;
        }
        double share = held.stream()
                .mapToDouble(each -> Joinings.of(each.joint().kind()).brace())
                .average()
                .orElse(0);
        Axis first = Axis.values()[(sheet.lie().thickness().ordinal() + 1) % 3];
        Axis second = Axis.values()[(sheet.lie().thickness().ordinal() + 2) % 3];
        List<Sheet.Corner> corners = corners(sheet).stream()
                .map(corner -> corner(corner, held, sheet))
                .toList();
        members.add(new Sheet(
                sheet.path(),
                corners,
                first,
                second,
                Parts.mm(sheet.box().extent(first)),
                Parts.mm(sheet.box().extent(second)),
                share * rigidity.getAsDouble() * Parts.mm(sheet.thickness())));
    }

    /** Held by whichever of the parts around it has a node nearest. */
    private Sheet.Corner corner(Vector at, List<Structure.Joined> held, Part sheet) {
        int best = -1;
        for (Structure.Joined each : held) {
            int node = findRod(each.other(sheet)).orElseThrow().nearest(at);
            if (best < 0
                    || nodes.get(node).minus(at).length()
                            < nodes.get(best).minus(at).length()) {
                best = node;
            }
        }
        return new Sheet.Corner(best, at.minus(nodes.get(best)));
    }

    private static List<Vector> corners(Part sheet) {
        Axis through = sheet.lie().thickness();
        Axis first = Axis.values()[(through.ordinal() + 1) % 3];
        Axis second = Axis.values()[(through.ordinal() + 2) % 3];
        double middle = (plane(sheet, through, false) + plane(sheet, through, true)) / 2;
        boolean[][] order = {{false, false}, {true, false}, {true, true}, {false, true}};
        List<Vector> corners = new ArrayList<>();
        for (boolean[] far : order) {
            corners.add(Vector.along(through, middle)
                    .with(first, plane(sheet, first, far[0]))
                    .with(second, plane(sheet, second, far[1])));
        }
        return corners;
    }

    private static double plane(Part part, Axis axis, boolean far) {
        return Parts.mm(part.box().plane(Side.of(axis, far)));
    }

    private void standOnFloor() {
        double floor = rods.values().stream()
                .mapToDouble(rod -> bottom(rod.part()))
                .min()
                .orElse(0);
        rods.values().stream()
                .filter(rod -> bottom(rod.part()) <= floor + LEVEL)
                .forEach(this::stand);
    }

    private void stand(Rod rod) {
        List<Integer> order = rod.nodes();
        if (rod.runs() == Axis.UP) {
            foot(rod, order.get(0));
        } else {
            foot(rod, order.get(0));
            foot(rod, order.get(order.size() - 1));
        }
    }

    private void foot(Rod rod, int node) {
        Part part = rod.part();
        feet.put(node, part);
        for (int i = 0; i < 3; i++) {
            held.add(node * Member.FREEDOMS + i);
        }
        double across = Parts.mm(part.box().extent(Axis.ACROSS));
        double deep = Parts.mm(part.box().extent(Axis.DEEP));
        double wide = Numbers.of("wide foot");
        if (deep >= wide * across) {
            held.add(node * Member.FREEDOMS + 3);
        }
        if (across >= wide * deep) {
            held.add(node * Member.FREEDOMS + 4);
        }
    }

    Frame frame() {
        return new Frame(nodes, members, held);
    }

    Structure structure() {
        return structure;
    }

    List<Rod> rods() {
        return List.copyOf(rods.values());
    }

    List<Vector> nodes() {
        return nodes;
    }

    Map<String, Link> links() {
        return links;
    }

    /** The nodes that stand on the floor, each with its part. */
    Map<Integer, Part> feet() {
        return feet;
    }

    /** Parts of which no stiffness is known. */
    List<Part> unknown() {
        return unknown;
    }

    /** Sheets that stand upright from left to right: a back. */
    List<Sheet> backs() {
        return members.stream()
                .filter(Sheet.class::isInstance)
                .map(Sheet.class::cast)
                .filter(sheet -> sheet.first() != Axis.DEEP && sheet.second() != Axis.DEEP)
                .toList();
    }
}
