package scantling.checks.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import scantling.checks.lasting.Woods;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.feature.Features;
import scantling.space.Axis;

/** Solves the frame of a piece under the loads of furniture tests. */
public final class Frames {
    private final Model model;
    private final Placed placed;
    private final Capacity capacity;
    private final Map<String, Structure.Joined> joined;
    private final List<Bar> bars;
    private final List<Framing.Case> cases = new ArrayList<>();
    private Optional<Framing.Loose> loose = Optional.empty();

    private Frames(Assembly assembly, Features features, Model model) {
        this.capacity = new Capacity(Woods.standard(), Cuts.of(features));
        this.model = model;
        this.placed = new Placed(assembly, model);
        this.joined = model.structure().links().stream()
                .collect(Collectors.toMap(each -> each.joint().path(), Function.identity(), (one, other) -> one));
        this.bars = model.frame().members().stream()
                .filter(Bar.class::isInstance)
                .map(Bar.class::cast)
                .toList();
    }

    /** Empty for a piece in which nothing is joined to anything that stands. */
    public static Optional<Framing> of(Assembly assembly) {
        return of(assembly, Features.NONE);
    }

    /** The same with what joinery has cut, which says how much each joint bears. */
    public static Optional<Framing> of(Assembly assembly, Features features) {
        Model model = Model.of(assembly);
        if (model.rods().size() < 2) {
            return Optional.empty();
        }
        List<String> unknown = model.unknown().stream().map(Part::path).toList();
        return Optional.of(
                unknown.isEmpty()
                        ? new Frames(assembly, features, model).solved()
                        : new Framing(List.of(), List.of(), Optional.empty(), Optional.empty(), unknown));
    }

    private Framing solved() {
        Frame frame = model.frame();
        List<Load> loads = Load.all().stream().filter(placed::applies).toList();
        // Loads on the same frame share its factors.
        Map<Boolean, List<Load>> onOwnFrame =
                loads.stream().collect(Collectors.partitioningBy(load -> placed.under(load, frame) != frame));
        solve(frame, onOwnFrame.getOrDefault(false, List.of()));
        if (loose.isEmpty()) {
            onOwnFrame.getOrDefault(true, List.of()).forEach(load -> solve(placed.under(load, frame), List.of(load)));
        }
        List<Framing.Line> lines = bars.stream()
                .map(bar -> new Framing.Line(bar.part(), bar.start(), bar.end()))
                .toList();
        cases.sort(Comparator.comparingInt(each -> loads.indexOf(each.load())));
        return new Framing(lines, cases, loose.isEmpty() ? square(frame) : Optional.empty(), loose, List.of());
    }

    private void solve(Frame frame, List<Load> loads) {
        Solver.Answer answer =
                Solver.solve(frame, loads.stream().map(placed::on).toList());
        if (answer instanceof Solver.Answer.Moved moved) {
            for (int i = 0; i < loads.size(); i++) {
                cases.add(judged(loads.get(i), moved.each().get(i)));
            }
        } else if (answer instanceof Solver.Answer.Loose found && frame.equals(model.frame())) {
            loose = Optional.of(new Framing.Loose(partAt(found.node()), words(found.direction())));
        }
    }

    private String partAt(int node) {
        return model.rods().stream()
                .filter(rod -> rod.nodes().contains(node))
                .map(rod -> rod.part().path())
                .findFirst()
                .orElse("");
    }

    private static String words(Vector way) {
        double across = Math.abs(way.across());
        double deep = Math.abs(way.deep());
        double up = Math.abs(way.up());
        if (across >= deep && across >= up) {
            return "sideways";
        }
        return deep >= up ? "forward and back" : "up and down";
    }

    private Framing.Case judged(Load load, double[] moved) {
        int most = 0;
        double far = 0;
        for (int node = 0; node < model.nodes().size(); node++) {
            double length = Solver.shift(moved, node).length();
            if (length > far) {
                most = node;
                far = length;
            }
        }
        List<Framing.Moved> ends = bars.stream()
                .map(bar -> new Framing.Moved(Solver.shift(moved, bar.from()), Solver.shift(moved, bar.to())))
                .toList();
        return new Framing.Case(load, far, partAt(most), ends, worst(moved));
    }

    private Optional<Framing.Loaded> worst(double[] moved) {
        List<Framing.Loaded> loaded = new ArrayList<>();
        model.links()
                .forEach((path, link) -> Optional.ofNullable(joined.get(path))
                        .flatMap(each -> loaded(each, link, moved))
                        .ifPresent(loaded::add));
        return loaded.stream().max(Comparator.comparingDouble(Framing.Loaded::ratio));
    }

    private Optional<Framing.Loaded> loaded(Structure.Joined each, Link link, double[] moved) {
        return capacity.find(each).map(bears -> {
            double moment =
                    Math.abs(link.passing(Solver.of(moved, link)).moment().of(bears.about()));
            return new Framing.Loaded(
                    each.joint().path(),
                    moment / 1000,
                    bears.moment() / 1000,
                    Joinings.of(each.joint().kind()).source());
        });
    }

    private Optional<Framing.Square> square(Frame frame) {
        List<Sheet> backs = model.backs();
        Optional<Framing.Case> side = cases.stream()
                .filter(each -> each.load().direction().equals("across"))
                .findFirst();
        if (backs.isEmpty() || side.isEmpty()) {
            return Optional.empty();
        }
        Load load = side.get().load();
        Solver.Answer bare = Solver.solve(frame.without(backs), List.of(placed.on(load)));
        double without =
                bare instanceof Solver.Answer.Moved moved ? sway(moved.each().get(0)) : Double.POSITIVE_INFINITY;
        double with = side.get().moved().stream()
                .mapToDouble(each -> Math.abs(each.to().of(Axis.ACROSS)))
                .max()
                .orElse(0);
        return Optional.of(new Framing.Square(load, with, without, backs.get(0).part(), placed.height()));
    }

    private double sway(double[] moved) {
        double most = 0;
        for (Bar bar : bars) {
            most = Math.max(most, Math.abs(Solver.shift(moved, bar.to()).across()));
        }
        return most;
    }
}
