package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import scantling.measure.Beside;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Span;
import scantling.measure.Tolerance;
import scantling.milling.Blank;
import scantling.milling.Milling;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.Problem;
import scantling.piece.Spelling;
import scantling.route.Route;
import scantling.route.Times;

/** Works out a whole plan: the same piece, bench and shop give the same plan. */
public final class Planner {
    private final Piece piece;
    private final Shop shop;
    private final Cutter cutter;
    private final List<Problem> benchProblems = new ArrayList<>();

    private Planner(Piece piece, Shop shop, Cutter cutter) {
        this.cutter = cutter;
        this.piece = piece.in(shop.office().home(), shop.office().coats());
        this.shop = shop;
    }

    /** A plan, and what is wrong with what the bench says: names that the piece does not have. */
    public record Outcome(Plan plan, List<Problem> benchProblems) {}

    /** Works everything out. */
    public static Outcome plan(Piece piece, BenchLog bench, Shop shop) {
        return plan(piece, bench, shop, Cutter.SEARCH);
    }

    /** Works everything out. @param cutter makes the saw plans */
    public static Outcome plan(Piece piece, BenchLog bench, Shop shop, Cutter cutter) {
        Planner planner = new Planner(piece, shop, cutter);
        Assembly assembly = planner.assembled(bench);
        return new Outcome(planner.derived(assembly, bench), List.copyOf(planner.benchProblems));
    }

    /** Parts, joints, openings and all named numbers; nothing of stock, saw plans or findings. */
    public static Assembly assemble(Piece piece, BenchLog bench, Shop shop) {
        return new Planner(piece, shop, Cutter.SEARCH).assembled(bench);
    }

    /** Only what a piece cannot be built for, as it is drawn and measured; nothing where it can. */
    public static List<Problem> impossible(Piece piece, BenchLog bench, Shop shop) {
        Planner planner = new Planner(piece, shop, Cutter.SEARCH);
        Assembly assembly = Joinery.settled(planner.assembled(bench), shop.joints());
        List<Problem> problems = new ArrayList<>(planner.benchProblems);
        problems.addAll(assembly.problems());
        problems.addAll(Possible.parts(assembly));
        return List.copyOf(problems);
    }

    /** Only what is said of a piece as it is drawn and measured, before its joints, coats, saw plans and route. */
    public static List<Finding> standing(Piece piece, BenchLog bench, Shop shop) {
        Planner planner = new Planner(piece, shop, Cutter.SEARCH);
        Assembly assembly = Joinery.settled(planner.assembled(bench), shop.joints());
        return assembly.problems().isEmpty() && Possible.parts(assembly).isEmpty()
                ? planner.asDrawn(assembly, Milling.blanks(assembly, shop.allowances()))
                : List.of();
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
            benchProblems.addAll(Possible.sizes(cut));
            asDrawn.parts().stream()
                    .filter(part -> part.path().equals(cut.path()))
                    .findFirst()
                    .ifPresentOrElse(
                            part -> cutSizes(part, cut, sizes),
                            () -> unknown("part", cut.path(), cut.span(), partPaths(asDrawn)));
        }
        for (BenchLog.Measured measured : bench.measured()) {
            if (!Possible.size(measured.size())) {
                benchProblems.add(Possible.tooLong(measured.path(), measured.size(), measured.span()));
            } else if (asDrawn.names().containsKey(measured.path())) {
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
        planned.forEach((name, dim) -> sizes.put(
                Ledger.path(part.path(), name),
                Optional.ofNullable(cut.sizes().get(name))
                        .filter(Possible::size)
                        .orElse(dim.value())));
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
        problems.addAll(Possible.parts(assembly));
        Matched matched = Matched.of(assembly);
        problems.addAll(matched.problems());
        if (!problems.isEmpty()) {
            return unplanned(assembly, FinishPlan.NONE, problems);
        }
        // Neither coats nor checks of the drawn piece need the joints: a second processor works them out meanwhile.
        Beside<FinishPlan> coats = Beside.begin(() -> Finishing.plan(assembly));
        List<Blank> blanks = Milling.blanks(assembly, shop.allowances());
        Beside<List<Finding>> standing = Beside.begin(() -> asDrawn(assembly, blanks));
        Features joints = Joinery.of(drawn, shop.joints(), Swings.of(drawn));
        Features features = joints.and(
                Hardware.of(assembly, shop.hardware(), joints, shop.joints().screws()));
        Beside<List<Finding>> cut = Beside.begin(() -> asCut(assembly, features));
        SawnBlanks sawn = new SawnBlanks(bench.sawn(), LengthFormat.of(piece.unit()));
        CutGroups groups = new CutGroups(shop, LengthFormat.of(piece.unit()), sawn, matched, cutter);
        List<CutGroup> cuts = groups.of(blanks);
        FinishPlan finish = coats.get();
        if (!finish.problems().isEmpty()) {
            return unplanned(assembly, finish, finish.problems());
        }
        Times times = shop.office().times();
        Route route = Routes.of(assembly, features, finish, groups.titled(blanks), cuts, times);
        List<Finding> findings = new ArrayList<>(standing.get());
        findings.addAll(cut.get());
        findings.addAll(sawn.findings(blanks));
        findings.addAll(finish.findings());
        findings.addAll(LeftOut.findings(cuts, LengthFormat.of(piece.unit())));
        findings.addAll(route.order().findings());
        return new Plan(assembly, features, finish, blanks, cuts, route, Acceptance.apply(piece, findings), problems);
    }

    private static Plan unplanned(Assembly assembly, FinishPlan finish, List<Problem> problems) {
        return new Plan(assembly, Features.NONE, finish, List.of(), List.of(), Route.NONE, List.of(), problems);
    }

    /** What is to be said of the piece as it is drawn and measured. */
    private List<Finding> asDrawn(Assembly assembly, List<Blank> blanks) {
        BenchRemedies remedies = new BenchRemedies(blanks, shop, LengthFormat.of(piece.unit()));
        List<Finding> findings = new ArrayList<>(assembly.findings());
        findings.addAll(AssemblyCheck.check(assembly));
        findings.addAll(FitCheck.check(assembly, remedies::told));
        findings.addAll(LastingChecks.check(assembly));
        return findings;
    }

    /** What is to be said of it with its joints and its holes. */
    private List<Finding> asCut(Assembly assembly, Features features) {
        List<Finding> findings = new ArrayList<>(FrameCheck.check(assembly, features));
        findings.addAll(features.findings());
        findings.addAll(HoleCheck.check(assembly, features, shop.hardware()));
        return findings;
    }

    private List<Problem> sizesWithoutANumber(Assembly assembly) {
        return piece.sizes().entrySet().stream()
                .filter(size -> !assembly.names().containsKey(size.getKey()))
                .map(size -> new Problem(
                        Possible.spanOf(size.getValue()),
                        "No number of this piece is called \"%s\".".formatted(size.getKey()),
                        Spelling.maybe(size.getKey(), assembly.names().keySet()).strip()))
                .toList();
    }
}
