package scantling.packet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import scantling.finishing.Amount;
import scantling.finishing.Caution;
import scantling.finishing.Coating;
import scantling.finishing.FinishGroup;
import scantling.finishing.FinishPlan;
import scantling.measure.LengthFormat;

/** What the templates ask about the finish, in the order it is put on. All of it plain text. */
public final class FinishPages {
    private static final double SQUARE_FEET = 10.76391041671;
    private static final double FLUID_OUNCES = 33.8140227018;

    private final LengthFormat format;
    private final Map<String, String> marks;
    private final Set<Caution> told = new HashSet<>();

    private FinishPages(LengthFormat format, Map<String, String> marks) {
        this.format = format;
        this.marks = marks;
    }

    /** The groups of a plan. @param marks of parts by their paths */
    static List<Group> of(FinishPlan plan, LengthFormat format, Map<String, String> marks) {
        FinishPages pages = new FinishPages(format, marks);
        return plan.groups().stream().map(pages::group).toList();
    }

    /** A group. @param heading its name and when @param area how much @param on marks of its parts @param why it is done then @param steps its coats @param masks what stays bare */
    public record Group(String heading, String area, String on, String why, List<Step> steps, List<Mask> masks) {}

    /** A coat. @param notes sentences @param cautions sentences with who says so */
    public record Step(
            String coat,
            String sand,
            String by,
            String amount,
            String next,
            List<String> notes,
            List<String> cautions) {}

    /** Places to keep bare, on each part of the marks. */
    public record Mask(String marks, String surface, String where) {}

    /** What all groups together take of a coat. @param tins what to buy @param mixing how it is mixed */
    public record Total(String coat, String takes, String tins, String mixing) {}

    /** What to have of each coat. */
    static List<Total> totals(FinishPlan plan, LengthFormat format) {
        FinishPages pages = new FinishPages(format, Map.of());
        return plan.buy().stream().map(pages::total).toList();
    }

    private Total total(FinishPlan.Buy buy) {
        String hardener = buy.hardener()
                .map(part -> "%s of it hardener. ".formatted(volume(part)))
                .orElse("");
        String thinner = buy.thinner()
                .map(part -> "%s of it thinner. ".formatted(volume(part)))
                .orElse("");
        return new Total(
                buy.coat().name(), volume(buy.litres()), BuyRow.tins(buy), (hardener + thinner + buy.mixing()).strip());
    }

    private Group group(FinishGroup group) {
        Set<String> on = new LinkedHashSet<>();
        group.parts().forEach(part -> on.add(marks.getOrDefault(part, part)));
        List<Step> steps = new ArrayList<>();
        group.coatings().forEach(coating -> steps.add(step(coating)));
        return new Group(
                group.name() + (group.beforeAssembly() ? ", before assembly" : ""),
                "%s: %s seen, %s inside, %s hidden; of it %s edges, %s end grain"
                        .formatted(
                                area(group.areas().whole()),
                                area(group.areas().show()),
                                area(group.areas().inside()),
                                area(group.areas().hidden()),
                                area(group.areas().edges()),
                                area(group.areas().ends())),
                String.join(", ", on),
                group.why(),
                steps,
                new MaskRows(format, marks).of(group));
    }

    private Step step(Coating coating) {
        List<String> notes = new ArrayList<>(coating.notes());
        coating.spray().ifPresent(spray -> {
            if (coating.number() == 1) {
                notes.add("Gun: " + spray.words() + ".");
            }
        });
        List<String> cautions = coating.cautions().stream()
                .filter(told::add)
                .map(caution -> "%s (%s)".formatted(caution.says(), caution.source()))
                .toList();
        String passes = coating.passes() > 0 ? ", %d passes".formatted(coating.passes()) : "";
        return new Step(
                coating.title(),
                coating.sand().map(FinishPages::range).orElse(""),
                coating.method().name() + passes + wet(coating),
                volume(coating.litres()),
                next(coating.drying()),
                notes,
                cautions);
    }

    /** The wet film to lay, where the figures of the coat say it. */
    private static String wet(Coating coating) {
        return coating.wetFilm()
                .map(film -> String.format(Locale.ROOT, ", %.0f to %.0f um wet", film.low(), film.high()))
                .orElse("");
    }

    private static String next(Coating.Drying drying) {
        String most =
                drying.most().map(hours -> ", at most " + plain(hours) + " h").orElse("");
        return range(drying.least()) + " h" + most;
    }

    private String area(double squareMetres) {
        return format.inches()
                ? String.format(Locale.ROOT, "%.1f ft2", squareMetres * SQUARE_FEET)
                : String.format(Locale.ROOT, "%.2f m2", squareMetres);
    }

    private String volume(Amount litres) {
        Amount said = format.inches() ? litres.times(FLUID_OUNCES) : litres;
        return String.format(
                Locale.ROOT,
                format.inches() ? "%.0f fl oz (%.0f to %.0f)" : "%.2f l (%.2f to %.2f)",
                said.likely(),
                said.low(),
                said.high());
    }

    private static String range(Amount amount) {
        String low = plain(amount.low());
        String high = plain(amount.high());
        return low.equals(high) ? low : low + " to " + high;
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
    }
}
