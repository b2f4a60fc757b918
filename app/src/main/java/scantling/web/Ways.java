package scantling.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.LengthReader;
import scantling.measure.Making;
import scantling.measure.Unit;
import scantling.piece.Piece;
import scantling.piece.PieceEditor;
import scantling.piece.PieceReader;
import scantling.plan.Plan;
import scantling.plan.StandardWoods;
import scantling.shop.JobPlan;
import scantling.shop.ShopStore;

/**
 * Looks for single changes that clear a finding: every length that the maker gave and that stands behind the finding is
 * tried somewhat larger and smaller, and the plan worked out anew. A change counts when the finding is gone and no other
 * stop or caution has come.
 */
public final class Ways {
    private static final double[] TIMES = {1.1, 0.9, 1.25, 0.8, 1.5, 0.65, 1.75, 2};
    private static final int MOST_GIVENS = 8;
    private static final int MOST_WAYS = 4;
    private static final Length INCH_STEP = Length.inches(1, 8);
    private static final Length MM_STEP = Length.mm(1);

    private final ShopStore store;
    private final JobPlan.Planned job;
    private final Finding finding;
    private final boolean saidAsDrawn;

    Ways(ShopStore store, JobPlan.Planned job, Finding finding) {
        this.store = store;
        this.job = job;
        this.finding = finding;
        this.saidAsDrawn = isSaid(WhatIf.standing(store, job.plan().assembly().piece(), job.bench()));
    }

    /** A change that clears it. @param path what is changed @param at where it stands @param from as written @param to instead */
    public record Way(String path, int at, String from, String to) {}

    /** The ways found, the smallest change of each length. */
    List<Way> find() {
        List<Way> ways = new ArrayList<>();
        for (PieceEditor.Given given : behind()) {
            if (ways.size() < MOST_WAYS) {
                way(given).ifPresent(ways::add);
            }
        }
        return ways;
    }

    /** Whether a finding is about a part, or about something of it: {@code shelf / sag}. */
    static boolean isAbout(Finding finding, String part) {
        return finding.subject().equals(part) || finding.subject().startsWith(part + Ledger.SEPARATOR);
    }

    /** The lengths given that the finding's numbers are worked out from. */
    private List<PieceEditor.Given> behind() {
        Set<Integer> starts = new LinkedHashSet<>();
        List<Dim> numbers = new ArrayList<>(finding.numbers());
        job.plan().assembly().parts().stream()
                .filter(part -> isAbout(finding, part.path()))
                .map(Ways::sizes)
                .forEach(numbers::addAll);
        numbers.forEach(dim -> collect(dim, starts, 0));
        List<PieceEditor.Given> givens = PieceEditor.givens(job.revision().text(), Construction.language());
        return starts.stream()
                .flatMap(start -> givens.stream()
                        .filter(given -> given.span().start() == start)
                        .limit(1))
                .filter(given -> LengthReader.read(given.value(), unit()).isPresent())
                .limit(MOST_GIVENS)
                .toList();
    }

    private static List<Dim> sizes(Part part) {
        return List.of(part.thickness(), part.width(), part.length());
    }

    private static void collect(Dim dim, Set<Integer> starts, int depth) {
        if (dim.making() instanceof Making.Given given) {
            starts.add(given.span().start());
        } else if (depth < 40) {
            dim.making().inputs().forEach(input -> collect(input.dim(), starts, depth + 1));
        }
    }

    private Unit unit() {
        return job.plan().assembly().piece().unit();
    }

    private Optional<Way> way(PieceEditor.Given given) {
        Length now = LengthReader.read(given.value(), unit()).orElse(Length.ZERO);
        boolean inch = LengthFormat.of(unit()).inches();
        for (double times : TIMES) {
            Length step = inch ? INCH_STEP : MM_STEP;
            Length then = Length.mm(Math.round(now.toMillimetres() * times)).roundedTo(step);
            String value = written(then, inch);
            if (then.isPositive() && !then.equals(now) && clears(given.path(), value)) {
                return Optional.of(new Way(given.path(), given.span().start(), given.value(), value));
            }
        }
        return Optional.empty();
    }

    private static String written(Length length, boolean inch) {
        String figure = (inch ? LengthFormat.INCH : LengthFormat.MM).format(length);
        return figure.endsWith(".0") ? figure.substring(0, figure.length() - 2) : figure;
    }

    private boolean clears(String path, String value) {
        return PieceEditor.replace(
                        job.revision().text(), Construction.language(), StandardWoods.standard(), path, value)
                .text()
                .flatMap(text -> PieceReader.read(text, Construction.language(), StandardWoods.standard())
                        .piece())
                .filter(piece -> !stillStands(piece))
                .map(piece -> WhatIf.plan(store, piece, job.bench()))
                .filter(plan -> plan.problems().isEmpty() && isBetter(plan))
                .isPresent();
    }

    /** Most changes clear nothing: what is said of the drawn piece is known before all the rest is worked out. */
    private boolean stillStands(Piece piece) {
        return saidAsDrawn && isSaid(WhatIf.standing(store, piece, job.bench()));
    }

    private boolean isSaid(List<Finding> findings) {
        return findings.stream().anyMatch(each -> Follow.isAlike(each, finding));
    }

    private boolean isBetter(Plan plan) {
        return !isSaid(plan.findings())
                && grave(plan) < grave(job.plan()) + (finding.severity() == Finding.Severity.NOTE ? 1 : 0);
    }

    private static long grave(Plan plan) {
        return plan.findings().stream()
                .filter(each -> each.severity() != Finding.Severity.NOTE)
                .count();
    }
}
