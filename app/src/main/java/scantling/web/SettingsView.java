package scantling.web;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.piece.Conditions;
import scantling.piece.Workshop;
import scantling.plan.Office;
import scantling.plan.Sawing;
import scantling.plan.Shop;
import scantling.stock.Allowances;
import scantling.timber.Table;

/**
 * What counts in the shop now.
 *
 * @param groups by section of the text
 */
public record SettingsView(List<Group> groups) {
    private static final Table ALLOWANCES = Table.read("stock/allowances.csv");

    /** Takes its own copy. */
    public SettingsView {
        groups = List.copyOf(groups);
    }

    /** Settings of one section. @param section its word in the text @param title for people @param lines each setting */
    public record Group(String section, String title, List<Line> lines) {}

    /**
     * One setting.
     *
     * @param key its word in the text
     * @param value what counts
     * @param own whether the shop says so itself
     * @param editable whether it can be written on its line; else only in the text
     */
    public record Line(String key, String value, boolean own, boolean editable) {}

    /** @param text the shop's own @param calendar when it works */
    static SettingsView of(Shop shop, String text, Workshop calendar, LengthFormat format) {
        Office office = shop.office();
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(
                "tools",
                "Tools, by the width of their cut",
                lengths(
                        "tools",
                        text,
                        office.tools().entrySet().stream()
                                .collect(Collectors.toMap(
                                        Map.Entry::getKey,
                                        tool -> shown(format, tool.getValue()),
                                        (a, b) -> a,
                                        TreeMap::new)))));
        groups.add(new Group("allowances", "Allowances, kerfs and trims", allowances(text, shop, format)));
        Map<String, String> sawing = new LinkedHashMap<>();
        Sawing.known().keySet().forEach(key -> sawing.put(key, shop.sawing().written(key)));
        groups.add(new Group("sawing", "Sawing, and what counts after money", lengths("sawing", text, sawing)));
        Map<String, String> tolerances = new TreeMap<>();
        shop.tolerances()
                .byProcess()
                .forEach((process, tolerance) -> tolerances.put(process, shown(format, tolerance.halfRange())));
        groups.add(new Group("tolerances", "Tolerances, either way", lengths("tolerances", text, tolerances)));
        Map<String, String> rates = new TreeMap<>();
        office.rates().numbers().forEach((key, value) -> rates.put(key, plain(value)));
        groups.add(new Group("rates", "Rates, in " + office.rates().currency(), lengths("rates", text, rates)));
        groups.add(new Group("calendar", "Calendar", week(calendar)));
        groups.add(new Group(
                "home",
                "Climate of where pieces go",
                List.of(new Line("home", home(office), office.home().isPresent(), false))));
        return new SettingsView(groups);
    }

    private static List<Line> lengths(String section, String text, Map<String, String> values) {
        return values.entrySet().stream()
                .map(value -> new Line(value.getKey(), value.getValue(), says(text, section, value.getKey()), true))
                .toList();
    }

    /** Whether the text has a section with such a key. */
    private static boolean says(String text, String section, String key) {
        int at = text.indexOf(section + ":");
        return at >= 0 && text.indexOf(key + ":", at) >= 0;
    }

    /** Each allowance that counts is the table's, unless the shop's own differs from it. */
    private static List<Line> allowances(String text, Shop shop, LengthFormat format) {
        List<Line> lines = new ArrayList<>();
        for (String key : Allowances.keys()) {
            Dim usual = ALLOWANCES.getRow("key", key).dim("value", key);
            boolean own = says(text, "allowances", key);
            lines.add(new Line(
                    key, own ? written(shop.allowances(), key, format) : shown(format, usual.value()), own, true));
        }
        return lines;
    }

    private static String written(Allowances own, String key, LengthFormat format) {
        Dim dim = switch (key) {
            case "length over finished" -> own.length();
            case "width over finished" -> own.width();
            case "thickness over finished" -> own.thickness();
            case "extra length per board" -> own.boardExtra();
            case "joint allowance per edge" -> own.jointEdge();
            case "kerf" -> own.kerf();
            case "sheet kerf" -> own.sheetKerf();
            case "sheet edge trim" -> own.edgeTrim();
            case "board end trim" -> own.endTrim();
            case "left long for trimming" -> own.leftLong();
            case "widest strip" -> own.widestStrip();
            case "widest planer" -> own.widestPlaner();
            case "shortest through the planer" -> own.shortestPlaner();
            case "typical board width" -> own.boardWidth();
            case "typical board length" -> own.boardLength();
            case "least offcut length" -> own.offcutLength();
            default -> own.offcutWidth();
        };
        return shown(format, dim.value());
    }

    private static List<Line> week(Workshop calendar) {
        List<Line> week = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            String hours = calendar.hours().getOrDefault(day, List.of()).stream()
                    .map(part -> part.from() + " to " + part.to())
                    .collect(Collectors.joining(", "));
            week.add(new Line(day.name().toLowerCase(Locale.ROOT), hours.isEmpty() ? "no work" : hours, false, false));
        }
        if (!calendar.closed().isEmpty()) {
            week.add(new Line(
                    "closed",
                    calendar.closed().stream().map(Days::written).collect(Collectors.joining(", ")),
                    true,
                    false));
        }
        return week;
    }

    private static String home(Office office) {
        return office.home()
                .map(Conditions.Home::name)
                .filter(name -> !name.isBlank())
                .orElse("as each piece says, else as usual");
    }

    /** In inches a decimal where the fractions of a rule do not meet it, so that what is shown can be written back. */
    private static String shown(LengthFormat format, Length size) {
        boolean onRule = size.roundedTo(Length.inches(1, 32)).equals(size);
        return !format.inches() || onRule
                ? format.formatWithUnit(size)
                : String.format(Locale.ROOT, "%.3f in", size.toInches());
    }

    private static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }
}
