package scantling.pricing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import scantling.construct.Finding;
import scantling.finishing.Amount;

/**
 * Two versions of a piece side by side.
 *
 * @param rows what differs and what does not
 * @param onlyFirst findings that only the first has
 * @param onlySecond findings that only the second has
 */
public record Beside(List<Row> rows, List<String> onlyFirst, List<String> onlySecond) {
    /** Takes its own copies. */
    public Beside {
        rows = List.copyOf(rows);
        onlyFirst = List.copyOf(onlyFirst);
        onlySecond = List.copyOf(onlySecond);
    }

    /** One line. @param what is compared @param difference the second less the first, empty where it cannot be taken */
    public record Row(String what, String first, String second, String difference) {}

    /** One version. @param findings all that a careful master says of it */
    public record Version(Basis basis, Estimate estimate, List<Finding> findings) {
        /** Takes its own copy. */
        public Version {
            findings = List.copyOf(findings);
        }
    }

    /** Compares two versions at the same rates. */
    public static Beside of(Version first, Version second, Rates rates) {
        List<Row> rows = new ArrayList<>();
        rows.add(words("wood", woods(first), woods(second)));
        rows.add(words("finish", finish(first), finish(second)));
        rows.add(money(
                "price",
                first.estimate().totals().price(),
                second.estimate().totals().price()));
        rows.add(money(
                "to pay with tax",
                first.estimate().totals().toPay(),
                second.estimate().totals().toPay()));
        for (Line.Section section : Line.Section.values()) {
            Money one = first.estimate().of(section).likely();
            Money other = second.estimate().of(section).likely();
            if (one.amount().signum() != 0 || other.amount().signum() != 0) {
                rows.add(money(section.word(), one, other));
            }
        }
        rows.add(money(
                "cost, nine of ten stay under",
                first.estimate().totals().ninety(),
                second.estimate().totals().ninety()));
        rows.add(number("hours", "%.1f", hours(first), hours(second)));
        rows.add(number("days from begin to end", "%.1f", days(first, rates), days(second, rates)));
        rows.add(number("weight, kg", "%.1f", weight(first), weight(second)));
        rows.add(number("parts", "%.0f", parts(first), parts(second)));
        return new Beside(rows, only(first, second), only(second, first));
    }

    private static String woods(Version version) {
        Set<String> woods = new TreeSet<>();
        version.basis()
                .assembly()
                .parts()
                .forEach(part -> woods.add(part.material().of()));
        return String.join(", ", woods);
    }

    private static String finish(Version version) {
        return String.join(", ", version.basis().assembly().piece().finish().values());
    }

    private static Row words(String what, String first, String second) {
        return new Row(what, first, second, first.equals(second) ? "same" : "other");
    }

    private static Row money(String what, Money first, Money second) {
        Money difference = second.minus(first);
        String sign = difference.amount().signum() > 0 ? "+" : "";
        return new Row(what, first.toString(), second.toString(), sign + difference);
    }

    private static Row number(String what, String format, double first, double second) {
        return new Row(
                what,
                String.format(Locale.ROOT, format, first),
                String.format(Locale.ROOT, format, second),
                String.format(Locale.ROOT, format.replace("%", "%+"), second - first));
    }

    private static double hours(Version version) {
        return version.estimate().work().total().likely();
    }

    /** By the calendar where it is known; else hands-on days and the days its finish dries, one after the other. */
    private static double days(Version version, Rates rates) {
        Amount drying = version.basis().finish().dryingHours();
        return version.basis().days().orElse(hours(version) / rates.number("hours a day") + drying.likely() / 24);
    }

    private static double weight(Version version) {
        return Weight.of(version.basis().assembly()).kilograms();
    }

    private static double parts(Version version) {
        return version.basis().assembly().parts().size();
    }

    private static List<String> only(Version here, Version there) {
        Set<String> others = new TreeSet<>();
        there.findings().forEach(finding -> others.add(told(finding)));
        return here.findings().stream()
                .map(Beside::told)
                .filter(sentence -> !others.contains(sentence))
                .distinct()
                .toList();
    }

    private static String told(Finding finding) {
        return "%s: %s: %s"
                .formatted(finding.severity().name().toLowerCase(Locale.ROOT), finding.subject(), finding.sentence());
    }
}
