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

/** The finish of a piece on one screen. */
record FinishSheet(FinishPlan plan) {
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

    private static void group(StringJoiner lines, FinishGroup group) {
        FinishGroup.Areas areas = group.areas();
        lines.add("%s%s: %s m2 (%s seen, %s inside, %s hidden; of it %s edges, %s end grain)"
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

    private static void coating(StringJoiner lines, Coating coating) {
        String sand = coating.sand().map(grit -> "sand " + range(grit) + "; ").orElse("");
        lines.add("  %s: %s%s by %s, %s l; next after %s h"
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

    private static String buy(FinishPlan.Buy buy) {
        String tins = buy.tins().stream().map(FinishSheet::plain).collect(Collectors.joining(" + "));
        String mixing = buy.mixing().isEmpty() ? "" : "; " + buy.mixing();
        return "%s: %s l, buy %s l%s".formatted(buy.coat().name(), litres(buy.litres()), tins, mixing);
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

    private static String area(double squareMetres) {
        return String.format(Locale.ROOT, "%.2f", squareMetres);
    }

    private static String litres(Amount litres) {
        return String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", litres.likely(), litres.low(), litres.high());
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
