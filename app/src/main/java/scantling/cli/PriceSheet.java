package scantling.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.pricing.Beside;
import scantling.pricing.CostSheet;
import scantling.pricing.Estimate;
import scantling.pricing.Line;
import scantling.pricing.Money;
import scantling.pricing.Quote;
import scantling.pricing.Rates;
import scantling.pricing.Spread;
import scantling.pricing.TimberChoice;

/** Money on one screen. */
final class PriceSheet {
    private static final int COLUMN = 28;

    private PriceSheet() {}

    static String estimate(Estimate estimate, Rates rates) {
        StringJoiner lines = new StringJoiner("\n");
        lines.add("%-52s %16s %16s %16s".formatted("For the maker only", "low", "likely", "high"));
        for (Line.Section section : Line.Section.values()) {
            section(lines, estimate, section);
        }
        Estimate.Totals totals = estimate.totals();
        row(lines, "cost", totals.cost());
        lines.add("");
        lines.add("half of such jobs cost less than %s, nine of ten less than %s, allowance for risk not counted"
                .formatted(totals.median(), totals.ninety()));
        lines.add("margin %s, %s %% of the price wanted".formatted(totals.margin(), plain(rates.number("margin"))));
        lines.add("price %s + tax %s = %s".formatted(totals.price(), totals.tax(), totals.toPay()));
        estimate.payments().forEach(payment -> lines.add("  %s %s".formatted(payment.sum(), payment.when())));
        if (rates.isExample()) {
            lines.add("These are the rates of an example shop: write your own and name them with --rates.");
        }
        String findings = findings(estimate);
        return findings.isEmpty() ? lines.toString() : lines + "\n" + findings;
    }

    private static void section(StringJoiner lines, Estimate estimate, Line.Section section) {
        List<Line> mine = estimate.lines().stream()
                .filter(line -> line.section() == section)
                .toList();
        if (mine.isEmpty()) {
            return;
        }
        row(lines, section.word(), estimate.of(section));
        for (Line line : mine) {
            String quantity = line.quantity().isEmpty() ? "" : ", " + line.quantity();
            row(lines, "  " + line.what() + quantity, line.cost());
        }
    }

    private static void row(StringJoiner lines, String what, Spread cost) {
        String fit = what.length() > 52 ? what + "\n" + " ".repeat(52) : what;
        lines.add("%-52s %16s %16s %16s".formatted(fit, cost.low(), cost.likely(), cost.high()));
    }

    static String findings(Estimate estimate) {
        StringJoiner lines = new StringJoiner("\n");
        estimate.findings()
                .forEach(finding -> lines.add("%s: %s %s"
                        .formatted(
                                finding.severity().name().toLowerCase(Locale.ROOT),
                                finding.sentence(),
                                finding.remedy())));
        return lines.toString();
    }

    static String quote(Quote quote) {
        StringJoiner lines = new StringJoiner("\n");
        lines.add("Quote" + quote.from().map(who -> ", from " + who).orElse(""));
        lines.add("");
        lines.add(quote.title() + quote.client().map(name -> "\nfor " + name).orElse(""));
        lines.add("");
        quote.gets().forEach(lines::add);
        lines.add("");
        lines.add("Price %s".formatted(quote.price()));
        if (quote.tax().amount().signum() > 0) {
            lines.add("Tax %s".formatted(quote.tax()));
        }
        lines.add("To pay %s".formatted(quote.toPay()));
        quote.payments().forEach(payment -> lines.add("  %s %s".formatted(payment.sum(), payment.when())));
        lines.add("");
        quote.terms().forEach(lines::add);
        return lines.toString();
    }

    static String beside(Beside beside, String first, String second) {
        StringJoiner lines = new StringJoiner("\n");
        row(lines, new Beside.Row("", first, second, "difference"));
        beside.rows().forEach(row -> row(lines, row));
        only(lines, first, beside.onlyFirst());
        only(lines, second, beside.onlySecond());
        return lines.toString();
    }

    static String name(Path file) {
        return Optional.ofNullable(file.getFileName()).map(Path::toString).orElse("");
    }

    /** Long words go one under the other. */
    private static void row(StringJoiner lines, Beside.Row row) {
        boolean fits = row.first().length() <= COLUMN && row.second().length() <= COLUMN;
        lines.add(
                fits
                        ? "%-28s  %-28s  %-28s  %s".formatted(row.what(), row.first(), row.second(), row.difference())
                        : "%-28s  %s%n%-28s  %s%n%-28s  %s"
                                .formatted(row.what(), row.first(), "", row.second(), "", row.difference()));
    }

    private static void only(StringJoiner lines, String name, List<String> findings) {
        if (!findings.isEmpty()) {
            lines.add("");
            lines.add("Only %s:".formatted(name));
            findings.forEach(finding -> lines.add("  " + finding));
        }
    }

    static String costSheet(CostSheet sheet) {
        StringJoiner lines = new StringJoiner("\n");
        lines.add("%-28s %24s %20s  %s".formatted("", "estimated", "actual", "difference"));
        sheet.rows()
                .forEach(row -> lines.add(
                        "%-28s %24s %20s  %s".formatted(row.what(), row.estimated(), row.actual(), row.difference())));
        sheet.profit().ifPresent(left -> lines.add("left of the price: " + left));
        lines.add("");
        lines.add("What this job taught");
        if (sheet.lessons().isEmpty()) {
            lines.add("  it came as planned");
        }
        sheet.lessons().forEach(lesson -> lines.add("  " + lesson));
        return lines.toString();
    }

    static String timber(TimberChoice choice, Unit unit) {
        LengthFormat format = LengthFormat.of(unit);
        StringJoiner lines = new StringJoiner("\n");
        lines.add("In place of " + choice.wood() + ", all else as it is:");
        lines.add("%-20s %14s %12s %14s %8s %8s %8s %8s  %s"
                .formatted("", "boards", "a part", "moves", "GPa", "N", "kg", "rack bf", "stain (common practice)"));
        for (TimberChoice.Row row : choice.rows()) {
            lines.add("%-20s %14s %12s %14s %8s %8s %8s %8s  %s"
                    .formatted(
                            row.wood(),
                            row.timber().map(Money::toString).orElse("no price"),
                            row.perPart().map(Money::toString).orElse("-"),
                            row.movement().map(format::formatWithUnit).orElse("-"),
                            number(row.stiffness(), "%.1f"),
                            number(row.hardness(), "%.0f"),
                            one(row.kilograms(), "%.1f"),
                            one(row.onRack(), "%.1f"),
                            row.stain()));
        }
        lines.add("moves: the part that moves most, from the driest month to the dampest; N: side hardness");
        return lines.toString();
    }

    private static String number(OptionalDouble number, String format) {
        return number.isPresent() ? one(number.getAsDouble(), format) : "-";
    }

    private static String one(double number, String format) {
        return String.format(Locale.ROOT, format, number);
    }

    private static String plain(double number) {
        return String.format(Locale.ROOT, "%.2f", number).replaceAll("\\.?0+$", "");
    }
}
