package scantling.cli;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.cutting.CutPlan;
import scantling.measure.LengthFormat;
import scantling.piece.Piece;
import scantling.plan.CutGroup;
import scantling.plan.CutReasons;
import scantling.plan.Plan;

/** A plan on one screen. */
record Summary(Plan plan) {
    private static final int MOST_FINDINGS = 12;

    /** The piece, its parts, what to buy, and what stands against cutting. */
    String text() {
        StringJoiner lines = new StringJoiner("\n");
        lines.add(head());
        lines.add("");
        lines.add(contents());
        LengthFormat format = LengthFormat.of(plan.assembly().piece().unit());
        plan.cuts().forEach(group -> {
            lines.add("  " + group(group));
            CutReasons.choices(group, format).forEach(reason -> lines.add("    " + reason));
        });
        lines.add("");
        lines.add(findings());
        return lines.toString();
    }

    private String head() {
        Piece piece = plan.assembly().piece();
        LengthFormat format = LengthFormat.of(piece.unit());
        String client = piece.client().map(name -> ", for " + name).orElse("");
        return "%s%s%n%s wide, %s deep, %s high"
                .formatted(
                        piece.title(),
                        client,
                        format.formatWithUnit(piece.width().value()),
                        format.formatWithUnit(piece.depth().value()),
                        format.formatWithUnit(piece.height().value()));
    }

    private String contents() {
        Assembly assembly = plan.assembly();
        return "%d parts, %d joints, %d openings, %d fittings"
                .formatted(
                        assembly.parts().size(),
                        assembly.joints().size(),
                        assembly.openings().size(),
                        assembly.fittings().stream()
                                .mapToInt(fitting -> fitting.count())
                                .sum());
    }

    private static String group(CutGroup group) {
        CutPlan cut = group.plan();
        String bound = cut.status() == CutPlan.Status.OPTIMAL
                ? "no plan can use less"
                : "at most %.0f %% above the best possible".formatted(Math.ceil(cut.gap() * 100));
        String left = cut.leftOut().isEmpty()
                ? ""
                : "; LEFT OUT: "
                        + cut.leftOut().stream().mapToInt(out -> out.count()).sum();
        return "%s: %d to cut, %s%s".formatted(group.title(), cut.used().size(), bound, left);
    }

    /** What a careful master would say: stops first. */
    String findings() {
        List<Finding> findings = plan.findings();
        if (findings.isEmpty()) {
            return "Nothing stands against cutting.";
        }
        StringJoiner lines = new StringJoiner("\n");
        findings.stream()
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .limit(MOST_FINDINGS)
                .forEach(finding -> lines.add(finding(finding)));
        if (findings.size() > MOST_FINDINGS) {
            lines.add("... and %d more in the packet.".formatted(findings.size() - MOST_FINDINGS));
        }
        return lines.toString();
    }

    private static String finding(Finding finding) {
        String word = finding.severity().name().toLowerCase(Locale.ROOT);
        String lead = finding.remedy().startsWith(Finding.ACCEPTED) ? " " : " Do: ";
        String remedy = finding.remedy().isEmpty() ? "" : lead + finding.remedy();
        String change = finding.changes().isEmpty() ? "" : " (edit --remedy '%s')".formatted(finding.name());
        return "%s: %s: %s%s%s".formatted(word, finding.name(), finding.sentence(), remedy, change);
    }
}
