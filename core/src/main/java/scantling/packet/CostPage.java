package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import scantling.measure.LengthFormat;
import scantling.plan.Costing;
import scantling.plan.Plan;
import scantling.plan.Shop;
import scantling.pricing.Basis;
import scantling.pricing.Beside;
import scantling.pricing.CostSheet;
import scantling.pricing.Estimate;
import scantling.pricing.Line;
import scantling.pricing.Money;
import scantling.pricing.Pricing;
import scantling.pricing.Rates;
import scantling.pricing.Spread;
import scantling.pricing.TimberChoice;

/**
 * The cost sheet as one self-contained page, for the maker only: what the piece costs line by line, how the price comes of
 * it, estimate against actual, woods side by side, and another version beside it where there is one.
 *
 * @param title of the piece
 * @param estimate what it costs
 * @param rates at which
 * @param actual against what it took, where something is logged
 * @param timber woods side by side, where it has solid parts
 * @param beside another version, where one is named
 * @param format how lengths are written
 */
public record CostPage(
        String title,
        Estimate estimate,
        Rates rates,
        Optional<CostSheet> actual,
        Optional<TimberChoice> timber,
        Optional<Versions> beside,
        LengthFormat format) {
    private static final String NONE = "\u2013";

    /** The cost sheet of a plan at the shop's own rates, with the woods it could be of. */
    public static CostPage of(Plan plan, Shop shop, LengthFormat format) {
        Basis basis = Costing.basis(plan, shop);
        Rates rates = shop.office().rates();
        return new CostPage(
                plan.assembly().piece().title(),
                Pricing.estimate(basis, rates),
                rates,
                Optional.empty(),
                TimberChoice.of(basis, rates, shop.rack()),
                Optional.empty(),
                format);
    }

    /** Two versions and what they are called. */
    public record Versions(Beside rows, String first, String second) {}

    /** A section of costs. @param name what kind @param sum of it @param rows its lines */
    public record Section(String name, Row sum, List<Row> rows) {}

    /** A line of costs. @param source who says so */
    public record Row(String what, String quantity, String low, String likely, String high, String source) {}

    /** A wood as a line. @param finish what this finish asks of it */
    public record Wood(
            String name,
            String boards,
            String perPart,
            String moves,
            String stiffness,
            String hardness,
            String weight,
            String stain,
            String finish,
            String rack) {}

    /** Writes it. */
    public static String html(CostPage page) {
        return Templates.render("cost.jte", page, JobSheetPage.css());
    }

    /** Those of its sheets that an order names, as PDF; nothing of woods for a piece without solid wood. */
    public Map<String, byte[]> papers(Order order) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        if (order.wants("cost")) {
            files.put("cost-sheet.pdf", pdf("costpaper.jte", order.paper()));
        }
        if (order.wants("timber") && timber.isPresent()) {
            files.put("timber.pdf", pdf("woodspaper.jte", order.paper()));
        }
        return files;
    }

    private byte[] pdf(String template, Paper paper) {
        String css = PacketPdf.css(title + "   for the maker only", paper);
        return PacketPdf.render(Templates.render(template, this, css), new PaperFigures());
    }

    /** Costs, section by section; those that are nothing are left out. */
    public List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        for (Line.Section section : Line.Section.values()) {
            List<Row> rows = estimate.lines().stream()
                    .filter(line -> line.section() == section)
                    .map(line -> row(line.what(), line.quantity(), line.cost(), line.source()))
                    .toList();
            if (!rows.isEmpty()) {
                sections.add(new Section(section.word(), row(section.word(), "", estimate.of(section), ""), rows));
            }
        }
        return sections;
    }

    private static Row row(String what, String quantity, Spread cost, String source) {
        return new Row(what, quantity, figure(cost.low()), figure(cost.likely()), figure(cost.high()), source);
    }

    /** Without its currency, which stands over the column. */
    private static String figure(Money money) {
        return String.format(Locale.ROOT, "%,.2f", money.amount());
    }

    /** Everything together. */
    public Row whole() {
        return row("cost", "", estimate.totals().cost(), "");
    }

    /** How the price comes of the cost, in sentences. */
    public List<String> price() {
        Estimate.Totals totals = estimate.totals();
        List<String> lines = new ArrayList<>();
        lines.add(
                "Half of such jobs cost less than %s, nine of ten less than %s; the allowance for risk is not counted in these."
                        .formatted(totals.median(), totals.ninety()));
        double share =
                totals.margin().amount().doubleValue() / totals.price().amount().doubleValue() * 100;
        lines.add(String.format(
                Locale.ROOT,
                "Price %s: a margin of %s is %.1f %% of the price (it would be %.1f %% on the cost).",
                totals.price(),
                totals.margin(),
                share,
                share / (100 - share) * 100));
        lines.add("With tax %s: %s to pay.".formatted(totals.tax(), totals.toPay()));
        estimate.payments().forEach(payment -> lines.add("%s %s.".formatted(payment.sum(), payment.when())));
        return lines;
    }

    /** The currency of all figures. */
    public String currency() {
        return rates.currency();
    }

    /** Woods in the order of their price. */
    public List<Wood> woods() {
        return timber.map(choice -> choice.rows().stream().map(this::wood).toList())
                .orElse(List.of());
    }

    private Wood wood(TimberChoice.Row row) {
        return new Wood(
                row.wood(),
                row.timber().map(CostPage::figure).orElse("no price"),
                row.perPart().map(CostPage::figure).orElse(NONE),
                row.movement().map(format::formatWithUnit).orElse(NONE),
                number(row.stiffness(), "%.1f"),
                number(row.hardness(), "%.0f"),
                String.format(Locale.ROOT, "%.1f", row.kilograms()),
                row.stain(),
                String.join(" ", row.finish()),
                row.onRack() > 0 ? String.format(Locale.ROOT, "%.1f", row.onRack()) : NONE);
    }

    private static String number(OptionalDouble number, String pattern) {
        return number.isPresent() ? String.format(Locale.ROOT, pattern, number.getAsDouble()) : NONE;
    }
}
