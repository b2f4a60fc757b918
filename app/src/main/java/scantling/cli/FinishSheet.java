package scantling.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import scantling.construct.Finding;
import scantling.finishing.Amount;
import scantling.finishing.Caution;
import scantling.finishing.Coating;
import scantling.finishing.FinishGroup;
import scantling.finishing.FinishPlan;

/** The finish of a piece on one screen. @param inches whether its maker thinks in square feet and fluid ounces */
record FinishSheet(FinishPlan plan, boolean inches) {
    private static final double SQUARE_FEET = 10.76391041671;
    private static final double FLUID_OUNCES = 33.8140227018;

    String text() {
        if (plan.groups().isEmpty()) {
            return "Nothing goes on the wood. Say what under \"finish\".";
        }
        StringJoiner lines = new StringJoiner("\n");
        plan.groups().forEach(group -> group(lines, group));
        lines.add("To have");
        plan.buy().forEach(buy -> lines.add("  " + buy(buy)));
        lines.add("");
        lines.add("Test board, of the same wood");
        plan.testBoard()
                .forEach(trial ->
                        lines.add("  %d. %s Look for: %s.".formatted(trial.number(), trial.what(), trial.look())));
        lines.add("");
        lines.add("Mind");
        cautions().forEach(caution -> lines.add("  %s (%s)".formatted(caution.says(), caution.source())));
        plan.findings().forEach(finding -> lines.add(finding(finding)));
        return lines.toString();
    }

    private void group(StringJoiner lines, FinishGroup group) {
        FinishGroup.Areas areas = group.areas();
        lines.add("%s%s: %s (%s seen, %s inside, %s hidden; of it %s edges, %s end grain)"
                .formatted(
                        group.name(),
                        group.beforeAssembly() ? ", before assembly" : "",
                        area(areas.whole()),
                        area(areas.show()),
                        area(areas.inside()),
                        area(areas.hidden()),
                        area(areas.edges()),
                        area(areas.ends())));
        lines.add("  on " + String.join(", ", group.parts()));
        if (!group.why().isEmpty()) {
            lines.add("  " + group.why());
        }
        group.coatings().forEach(coating -> coating(lines, coating));
        if (!group.masks().isEmpty()) {
            lines.add("  keep %d places bare for glue".formatted(group.masks().size()));
        }
        lines.add("");
    }

    private void coating(StringJoiner lines, Coating coating) {
        String sand = coating.sand().map(grit -> "sand " + range(grit) + "; ").orElse("");
        lines.add("  %s: %s%s by %s, %s; next after %s h"
                .formatted(
                        coating.step(),
                        sand,
                        coating.title(),
                        coating.method().name(),
                        litres(coating.litres()),
                        range(coating.drying().least())));
        coating.spray()
                .ifPresent(spray -> lines.add("      " + spray.words()
                        + (coating.passes() > 0 ? "; %d passes".formatted(coating.passes()) : "")));
        coating.notes().forEach(note -> lines.add("      " + note));
    }

    private String buy(FinishPlan.Buy buy) {
        String tins = buy.tins().stream().map(FinishSheet::plain).collect(Collectors.joining(" + "));
        String mixing = buy.mixing().isEmpty() ? "" : "; " + buy.mixing();
        return "%s: %s, buy %s l%s".formatted(buy.coat().name(), litres(buy.litres()), tins, mixing);
    }

    private Set<Caution> cautions() {
        Set<Caution> all = new LinkedHashSet<>();
        plan.groups().forEach(group -> group.coatings().forEach(coating -> all.addAll(coating.cautions())));
        return all;
    }

    private static String finding(Finding finding) {
        return "%s: %s %s"
                .formatted(finding.severity().name().toLowerCase(Locale.ROOT), finding.sentence(), finding.remedy())
                .strip();
    }

    private String area(double squareMetres) {
        return inches
                ? String.format(Locale.ROOT, "%.1f ft2", squareMetres * SQUARE_FEET)
                : String.format(Locale.ROOT, "%.2f m2", squareMetres);
    }

    private String litres(Amount litres) {
        Amount said = inches ? litres.times(FLUID_OUNCES) : litres;
        String format = inches ? "%.0f fl oz (%.0f to %.0f)" : "%.2f l (%.2f to %.2f)";
        return String.format(Locale.ROOT, format, said.likely(), said.low(), said.high());
    }

    private static String range(Amount amount) {
        List<String> ends = List.of(plain(amount.low()), plain(amount.high()));
        return ends.get(0).equals(ends.get(1)) ? ends.get(0) : String.join(" to ", ends);
    }

    private static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }
}
