package scantling.construct;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.measure.Ledger;
import scantling.measure.Span;
import scantling.measure.Tolerance;
import scantling.piece.Element;
import scantling.piece.Piece;
import scantling.piece.Problem;
import scantling.space.Box;
import scantling.stock.HardwareProfiles;

/** The assembly while it grows. Lives for one derivation, used by one thread. */
final class Works {
    private final Piece piece;
    private final Ledger ledger;
    private final Map<String, ElementKind> kinds;
    private final Tolerances tolerances;
    private final HardwareProfiles hardware;
    private final List<SystemCase> systemCases = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Fitting> fittings = new ArrayList<>();
    private final List<Problem> problems;
    private final List<Finding> findings;
    private final Set<String> paths;
    private final List<Runnable> later = new ArrayList<>();
    private final Set<String> alone = new HashSet<>();

    Works(
            Piece piece,
            Ledger ledger,
            Map<String, ElementKind> kinds,
            Tolerances tolerances,
            HardwareProfiles hardware) {
        this(piece, ledger, kinds, tolerances, hardware, new ArrayList<>(), new ArrayList<>(), new HashSet<>());
    }

    private Works(
            Piece piece,
            Ledger ledger,
            Map<String, ElementKind> kinds,
            Tolerances tolerances,
            HardwareProfiles hardware,
            List<Problem> problems,
            List<Finding> findings,
            Set<String> paths) {
        this.piece = piece;
        this.ledger = ledger;
        this.kinds = kinds;
        this.tolerances = tolerances;
        this.hardware = hardware;
        this.problems = problems;
        this.findings = findings;
        this.paths = paths;
    }

    /** Works of the same piece where nothing stands yet: for what is built as seen from another side. */
    Works apart() {
        return new Works(piece, ledger, kinds, tolerances, hardware, problems, findings, paths);
    }

    /** Takes over what was built apart. */
    void take(Works apart, Quarter quarter) {
        apart.parts.forEach(part -> parts.add(quarter.of(part)));
        apart.joints.forEach(joint -> joints.add(quarter.of(joint)));
        apart.openings.forEach(opening -> openings.add(quarter.of(opening)));
        fittings.addAll(apart.fittings);
    }

    Piece piece() {
        return piece;
    }

    Ledger ledger() {
        return ledger;
    }

    List<Part> parts() {
        return parts;
    }

    List<Joint> joints() {
        return joints;
    }

    List<Opening> openings() {
        return openings;
    }

    HardwareProfiles hardware() {
        return hardware;
    }

    List<SystemCase> systemCases() {
        return systemCases;
    }

    List<Fitting> fittings() {
        return fittings;
    }

    Tolerance tolerance(String process) {
        return tolerances.of(process);
    }

    void problem(Span span, String message, String remedy) {
        problems.add(new Problem(span, message, remedy));
    }

    void find(Finding finding) {
        findings.add(finding);
    }

    /** The path itself, or with the first number from 2 that makes it new. */
    String uniquePath(String wanted) {
        String path = wanted;
        for (int i = 2; !paths.add(path); i++) {
            path = wanted + " " + i;
        }
        return path;
    }

    Box buildAll(List<Element> steps, Site site) {
        Box left = site.space();
        for (Element step : BuildOrder.of(steps)) {
            ElementKind kind = kinds.get(step.kind());
            if (kind == null) {
                throw new IllegalStateException("No element is called (%s).".formatted(step.kind()));
            }
            left = kind.build(step, site.with(left));
        }
        return left;
    }

    /** Paths of parts that stand for nothing but themselves. */
    Set<String> alone() {
        return alone;
    }

    /** What is left until everything stands. */
    void later(Runnable work) {
        later.add(work);
    }

    /** Does what was left. */
    void settle() {
        later.forEach(Runnable::run);
        later.clear();
    }

    Assembly finished() {
        return new Assembly(
                piece,
                List.copyOf(parts),
                List.copyOf(joints),
                List.copyOf(openings),
                List.copyOf(fittings),
                ledger.names(),
                List.copyOf(problems),
                List.copyOf(findings));
    }
}
