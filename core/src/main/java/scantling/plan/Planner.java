package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import scantling.checks.Acceptance;
import scantling.checks.AssemblyCheck;
import scantling.checks.FitCheck;
import scantling.checks.frame.FrameCheck;
import scantling.checks.lasting.LastingChecks;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Features;
import scantling.finishing.FinishPlan;
import scantling.finishing.Finishing;
import scantling.hardware.Hardware;
import scantling.hardware.HoleCheck;
import scantling.joinery.Joinery;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Making;
import scantling.measure.Span;
import scantling.measure.Tolerance;
import scantling.milling.Blank;
import scantling.milling.Milling;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.Problem;
import scantling.piece.Spelling;
import scantling.route.Route;

/** Works out a whole plan: the same piece, bench and shop give the same plan. */
public final class Planner {
    private final Piece piece;
    private final Shop shop;
    private final List<Problem> benchProblems = new ArrayList<>();

    private Planner(Piece piece, Shop shop) {
        this.piece = piece.in(shop.office().home(), shop.office().coats());
        this.shop = shop;
    }

    /** A plan, and what is wrong with what the bench says: names that the piece does not have. */
    public record Outcome(Plan plan, List<Problem> benchProblems) {}

    /** Works everything out. */
    public static Outcome plan(Piece piece, BenchLog bench, Shop shop) {
        Planner planner = new Planner(piece, shop);
        Assembly assembly = planner.assembled(bench);
        return new Outcome(planner.derived(assembly, bench), List.copyOf(planner.benchProblems));
    }

    /** Parts, joints, openings and all named numbers; nothing of stock, saw plans or findings. */
    public static Assembly assemble(Piece piece, BenchLog bench, Shop shop) {
        return new Planner(piece, shop).assembled(bench);
    }

    /** A part that came out as planned was cut by the plan as it stood before anything was measured. */
    private Assembly assembled(BenchLog bench) {
        Assembly asDrawn = assembleWith(Map.of());
        return bench.equals(BenchLog.EMPTY) ? asDrawn : assembleWith(sizesFrom(bench, asDrawn));
    }

    private Assembly assembleWith(Map<String, Length> measured) {
        Tolerance measuring = shop.tolerances().of("measured at the bench");
        Ledger ledger = new Ledger(measured, piece.sizes(), measuring);
        return Construction.assemble(piece, ledger, shop.tolerances(), shop.hardware());
    }

    private Map<String, Length> sizesFrom(BenchLog bench, Assembly asDrawn) {
        Map<String, Length> sizes = new LinkedHashMap<>();
        for (BenchLog.Cut cut : bench.cut()) {
            asDrawn.parts().stream()
                    .filter(part -> part.path().equals(cut.path()))
                    .findFirst()
                    .ifPresentOrElse(
                            part -> cutSizes(part, cut, sizes),
                            () -> unknown("part", cut.path(), cut.span(), partPaths(asDrawn)));
        }
        for (BenchLog.Measured measured : bench.measured()) {
            if (asDrawn.names().containsKey(measured.path())) {
                sizes.put(measured.path(), measured.size());
            } else {
                unknown(
                        "number",
                        measured.path(),
                        measured.span(),
                        asDrawn.names().keySet());
            }
        }
        return sizes;
    }

    private static void cutSizes(Part part, BenchLog.Cut cut, Map<String, Length> sizes) {
        Map<String, Dim> planned =
                Map.of("length", part.length(), "width", part.width(), "thickness", part.thickness());
        planned.forEach((name, dim) ->
                sizes.put(Ledger.path(part.path(), name), cut.sizes().getOrDefault(name, dim.value())));
    }

    private static Set<String> partPaths(Assembly assembly) {
        return assembly.parts().stream().map(Part::path).collect(Collectors.toCollection(TreeSet::new));
    }

    private void unknown(String what, String path, Span span, Set<String> known) {
        benchProblems.add(new Problem(
                span,
                "No %s of this piece is called \"%s\".".formatted(what, path),
                (Spelling.maybe(path, known) + " \"scantling explain\" lists all names.").strip()));
    }

    private Plan derived(Assembly drawn, BenchLog bench) {
        Assembly assembly = Joinery.settled(drawn, shop.joints());
        List<Problem> problems = new ArrayList<>(assembly.problems());
        problems.addAll(sizesWithoutANumber(assembly));
        FinishPlan finish = problems.isEmpty() ? Finishing.plan(assembly) : FinishPlan.NONE;
        problems.addAll(finish.problems());
        if (!problems.isEmpty()) {
            return new Plan(assembly, Features.NONE, finish, List.of(), List.of(), Route.NONE, List.of(), problems);
        }
        Features joints = Joinery.of(drawn, shop.joints(), Swings.of(drawn));
        Features features = joints.and(
                Hardware.of(assembly, shop.hardware(), joints, shop.joints().screws()));
        List<Blank> blanks = Milling.blanks(assembly, shop.allowances());
        LengthFormat format = LengthFormat.of(piece.unit());
        SawnBlanks sawn = new SawnBlanks(bench.sawn(), format);
        CutGroups groups = new CutGroups(shop, format, sawn);
        List<CutGroup> cuts = groups.of(blanks);
        Route route = Routes.of(
                assembly,
                features,
                finish,
                groups.titled(blanks),
                cuts,
                shop.office().times());
        List<Finding> findings = checked(assembly, features, new BenchRemedies(blanks, shop, format));
        findings.addAll(sawn.findings(blanks));
        findings.addAll(finish.findings());
        findings.addAll(LeftOut.findings(cuts));
        findings.addAll(route.order().findings());
        return new Plan(assembly, features, finish, blanks, cuts, route, Acceptance.apply(piece, findings), problems);
    }

    /** What is to be said of the piece as it is drawn and measured. */
    private List<Finding> checked(Assembly assembly, Features features, BenchRemedies remedies) {
        List<Finding> findings = new ArrayList<>(assembly.findings());
        findings.addAll(AssemblyCheck.check(assembly));
        findings.addAll(FitCheck.check(assembly, remedies::told));
        findings.addAll(LastingChecks.check(assembly));
        findings.addAll(FrameCheck.check(assembly, features));
        findings.addAll(features.findings());
        findings.addAll(HoleCheck.check(assembly, features, shop.hardware()));
        return findings;
    }

    private List<Problem> sizesWithoutANumber(Assembly assembly) {
        return piece.sizes().entrySet().stream()
                .filter(size -> !assembly.names().containsKey(size.getKey()))
                .map(size -> new Problem(
                        spanOf(size.getValue()),
                        "No number of this piece is called \"%s\".".formatted(size.getKey()),
                        Spelling.maybe(size.getKey(), assembly.names().keySet()).strip()))
                .toList();
    }

    private static Span spanOf(Dim dim) {
        return dim.making() instanceof Making.Given given ? given.span() : new Span(1, 1, 0, 0);
    }
}
