package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import scantling.checks.lasting.Section.Strip;
import scantling.construct.Assembly;
import scantling.construct.Change;
import scantling.construct.Changes;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Contact;
import scantling.space.Side;
import scantling.timber.Table;

/** Shelves, tops and bottoms that sag further than a named rule allows, each with what would keep it. */
final class ShelfCheck {
    private static final Table LOADS = Table.read("checks/shelf-loads.csv");

    /** Sizes that differ by less make no other shelf, mm. */
    private static final double ALIKE = 20;

    private static final int MOST_NAMED = 3;

    private final Assembly assembly;
    private final Stiffness stiffness;
    private final Say say;

    ShelfCheck(Assembly assembly, Woods woods) {
        this.assembly = assembly;
        this.stiffness = new Stiffness(woods);
        this.say = Say.of(assembly);
    }

    /** A shelf with the exact span it was found to have. */
    private record Spanning(Part part, Dim span, Shelf shelf) {
        /** Boards that sag alike whatever they are called; spans within a few millimetres are one. */
        String likeness() {
            return String.join(
                    "|",
                    part.material().of(),
                    part.thickness().value().toString(),
                    String.valueOf(Math.round(shelf.span() / ALIKE)),
                    shelf.lippings().toString());
        }
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        alike(findings).forEach(alike -> judge(alike).ifPresent(findings::add));
        return findings;
    }

    /** What each shelf may carry, those alike once. */
    List<Carrying> carry() {
        return alike(new ArrayList<>()).stream()
                .map(alike -> Carrying.shelves(
                        alike.stream().map(each -> each.part().path()).toList(),
                        alike.get(0).shelf(),
                        area(alike.get(0).part().box()),
                        load(alike.get(0).part())))
                .toList();
    }

    private List<List<Spanning>> alike(List<Finding> findings) {
        Map<String, List<Spanning>> groups = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            if (Parts.isShelf(part) && !part.box().isEmpty() && !standsOnFloor(part) && !isCovered(part)) {
                spanning(part, findings)
                        .ifPresent(one -> groups.computeIfAbsent(one.likeness(), key -> new ArrayList<>())
                                .add(one));
            }
        }
        return List.copyOf(groups.values());
    }

    /** Held both ways, each takes what bends it as far as the other: Grashof's crossing strips. */
    private static Spanning sharing(Spanning stiffer, List<Spanning> ways) {
        double sum =
                ways.stream().mapToDouble(way -> 1 / way.shelf().sag(1, false)).sum();
        double takes = 1 / (sum * stiffer.shelf().sag(1, false));
        Ends ends = stiffer.shelf().ends();
        return new Spanning(
                stiffer.part(), stiffer.span(), stiffer.shelf().held(new Ends(ends.turning(), ends.past(), takes)));
    }

    /** Whether another board lies on it and takes the load: a top under a top. */
    private boolean isCovered(Part part) {
        return assembly.parts().stream()
                .filter(other -> other.lie().thickness() == Axis.UP)
                .flatMap(other -> Contact.between(part.box(), other.box()).stream())
                .filter(at -> at.side() == Side.TOP)
                .anyMatch(at -> 2 * area(at.patch()) > area(part.box()));
    }

    private static double area(Box box) {
        return Parts.mm(box.extent(Axis.ACROSS)) * Parts.mm(box.extent(Axis.DEEP));
    }

    private static boolean standsOnFloor(Part part) {
        return !part.box().bottom().value().isPositive();
    }

    private Optional<Spanning> spanning(Part part, List<Finding> findings) {
        Supports supports = new Supports(assembly, part);
        if (supports.isBedded()) {
            return Optional.empty();
        }
        List<Spanning> ways = new ArrayList<>();
        boolean held = false;
        for (Axis along : List.of(Axis.ACROSS, Axis.DEEP)) {
            Optional<Dim> span = supports.findSpan(along);
            held |= span.isPresent();
            span.flatMap(clear -> spanning(part, clear, along, supports)).ifPresent(ways::add);
        }
        if (ways.isEmpty()) {
            findings.add(held ? unknown(part) : unheld(part));
        }
        return ways.stream()
                .min((a, b) -> Double.compare(a.shelf().sag(1, false), b.shelf().sag(1, false)))
                .map(stiffer -> ways.size() < 2 ? stiffer : sharing(stiffer, ways));
    }

    private Optional<Spanning> spanning(Part part, Dim span, Axis along, Supports supports) {
        OptionalDouble elasticity = stiffness.find(part, along);
        if (elasticity.isEmpty()) {
            return Optional.empty();
        }
        double width = Parts.mm(part.box().extent(along.third(Axis.UP)));
        double thickness = Parts.mm(part.thickness());
        Set<String> joined = Parts.joinedTo(assembly, part);
        List<Strip> strips = assembly.parts().stream()
                .filter(other -> joined.contains(other.path()) && Parts.isLipping(other))
                .flatMap(other -> lipping(other, part, along))
                .toList();
        double creep = stiffness.creepFactor(part);
        Shelf shelf = new Shelf(elasticity.getAsDouble(), width, thickness, Parts.mm(span), strips, creep)
                .held(new Ends(0, supports.past(along)));
        return Optional.of(new Spanning(part, span, shelf));
    }

    private Stream<Strip> lipping(Part other, Part part, Axis along) {
        if (other.lie().length() != along) {
            return Stream.empty();
        }
        double bottom = Parts.mm(other.box().bottom()) - Parts.mm(part.box().bottom());
        double wide = Parts.mm(other.box().extent(along.third(Axis.UP)));
        double deep = Parts.mm(other.box().extent(Axis.UP));
        return stiffness.find(other, along).stream().mapToObj(stiff -> new Strip(stiff, wide, deep, bottom));
    }

    private Table.Row load(Part part) {
        String said = (assembly.piece().title() + " " + part.path()).toLowerCase(Locale.ROOT);
        return LOADS.rows().stream()
                .filter(row -> said.contains(row.text("word")))
                .findFirst()
                .orElseThrow();
    }

    private Optional<Finding> judge(List<Spanning> alike) {
        Spanning one = alike.get(0);
        double planned = SagRule.pascal(load(one.part()).number("load_psf"));
        boolean stays = load(one.part()).text("stays").equals("yes");
        return SagRule.all().stream()
                .map(rule -> stays ? rule : rule.withoutYears())
                .filter(rule -> !one.shelf().keeps(rule, planned))
                .findFirst()
                .map(rule -> finding(alike, rule, planned));
    }

    private Finding finding(List<Spanning> alike, SagRule rule, double planned) {
        Spanning one = alike.get(0);
        Shelf shelf = one.shelf();
        double sag = shelf.sag(rule, planned);
        Table.Row load = load(one.part());
        double psf = Shelf.load(rule, planned) / SagRule.pascal(1);
        String sentence = "%s %s over %s under %s lb/ft2%s; %s allows %s."
                .formatted(
                        named(alike),
                        say.near(sag),
                        say.near(one.span().value()),
                        Math.round(psf),
                        years(one, rule, load),
                        rule.name(),
                        say.near(rule.allowed(shelf.span())));
        List<Dim> numbers = List.of(sag(one, sag), one.span(), one.part().thickness());
        String source = rule.source() + "; sag by Wood Handbook Eq. 9-1; load: " + loadSource(rule, load)
                + (rule.creeps() ? "; creep: " + stiffness.creepSource(one.part()) : "");
        return new Finding(
                        rule.severity(),
                        one.part().path(),
                        sentence + held(one, rule, planned),
                        numbers,
                        source,
                        remedy(shelf, rule, planned))
                .by("sag")
                .offering(thicker(one, rule, planned));
    }

    /** What ends held in dadoes or tenons make of it: a comfort, never counted on, for no published number stands behind it. */
    private String held(Spanning one, SagRule rule, double planned) {
        double turning = new HeldEnds(assembly, stiffness).turning(one.part());
        double sag = one.shelf()
                .held(new Ends(
                        turning, one.shelf().ends().past(), one.shelf().ends().takes()))
                .sag(rule, planned);
        return turning > 0 && sag < 0.9 * one.shelf().sag(rule, planned)
                ? " Counted with its ends lying free; held as they are it may be about %s.".formatted(say.near(sag))
                : "";
    }

    private static String named(List<Spanning> alike) {
        List<String> paths =
                alike.stream().map(each -> each.part().path()).limit(MOST_NAMED).toList();
        boolean all = paths.size() == alike.size();
        return String.join(", ", all ? paths : paths.subList(0, 1))
                + (all ? "" : Say.alike(alike.size()))
                + (alike.size() == 1 ? " sags" : all ? " sag" : " sags");
    }

    private static String loadSource(SagRule rule, Table.Row load) {
        return rule.load().isPresent() ? rule.source() : load.source();
    }

    private static String years(Spanning one, SagRule rule, Table.Row load) {
        String use = rule.load().isPresent() ? "" : " (" + load.text("use") + ")";
        return rule.creeps()
                ? use + " after years, " + Say.one(one.shelf().creep()) + " times the first sag"
                : use + " when new";
    }

    // Bending is nearly all of it: the sag goes with the fourth power of the span and the inverse cube of thickness.
    private static Dim sag(Spanning one, double sag) {
        return Dim.worked(
                Length.ofMillimetres(sag),
                "sag of a board on two supports, Wood Handbook Eq. 9-1",
                new Making.Input(4 * sag / one.shelf().span(), one.span()),
                new Making.Input(-3 * sag / one.shelf().thickness(), one.part().thickness()));
    }

    private String remedy(Shelf shelf, SagRule rule, double planned) {
        List<String> ways = new ArrayList<>();
        shelf.leastThickness(rule, planned).ifPresent(mm -> ways.add("make it %s thick".formatted(say.atLeast(mm))));
        shelf.greatestSpan(rule, planned)
                .ifPresent(mm -> ways.add("hold it every %s with a divider or a post".formatted(say.atMost(mm))));
        shelf.lippingDepth(rule, planned)
                .ifPresent(mm -> ways.add("glue a hardwood lipping %s by %s deep along an edge"
                        .formatted(say.near(Figures.of("lipping thickness")), say.atLeast(mm))));
        String all = String.join(", or ", ways);
        return all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1) + ".";
    }

    /** Thicker stock for all that is of the material, where the maker typed its thickness: for this rule, then for all. */
    private List<Change> thicker(Spanning one, SagRule rule, double planned) {
        return Stream.concat(Stream.of(rule), SagRule.all().stream())
                .flatMap(each ->
                        one.shelf().leastThickness(each, planned).stream().boxed())
                .map(say::stock)
                .sorted()
                .distinct()
                .filter(thick -> thick.compareTo(one.part().thickness().value()) > 0)
                .filter(thick -> one.shelf().thick(thick.toMillimetres()).keeps(rule, planned))
                .flatMap(thick -> Changes.bring(one.part().thickness(), thick, assembly.piece()).stream())
                .toList();
    }

    private static Finding unheld(Part part) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        part.path(),
                        "Nothing was found to carry %s at both ends, so its sag is not known.".formatted(part.path()),
                        List.of(part.length()),
                        "the parts and joints of this piece",
                        "Say what holds it, or join it to what stands beside it.")
                .by("carried");
    }

    private static Finding unknown(Part part) {
        return new Finding(
                        Finding.Severity.NOTE,
                        part.path(),
                        "How stiff %s is, at this thickness, is in no table; the sag of %s is not known."
                                .formatted(part.material().of(), part.path()),
                        List.of(part.thickness()),
                        "the timber tables",
                        "Name a wood or sheet like it that the tables know.")
                .by("sag");
    }
}
