package scantling.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.checks.FitCheck;
import scantling.checks.Misfit;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.milling.Blank;
import scantling.piece.Material;
import scantling.space.Side;
import scantling.stock.Offcut;
import scantling.stock.Stock;
import scantling.timber.Table;

/** What to do about a part that is cut and no longer fits: take wood off, pack it out, or cut a new one from what there is. */
public final class BenchRemedies {
    private static final Table LIMITS = Table.read("plan/bench-remedies.csv");

    private final List<Blank> blanks;
    private final Shop shop;
    private final LengthFormat format;

    BenchRemedies(List<Blank> blanks, Shop shop, LengthFormat format) {
        this.blanks = blanks;
        this.shop = shop;
        this.format = format;
    }

    /** The sorts of remedy. */
    public enum Kind {
        /** Take wood off the part. */
        TAKE_OFF,
        /** Fill the gap. */
        PACK_OUT,
        /** Note it as spoilt and cut another. */
        CUT_NEW
    }

    /**
     * Something that makes a misfit fit.
     *
     * @param kind what sort
     * @param part which part
     * @param size which of its sizes
     * @param amount how much to take off or fill; zero for a new one
     * @param stock id of the piece in the rack that a new one comes out of; empty when none is large enough
     * @param sentence what to do, for people
     */
    public record Remedy(Kind kind, String part, String size, Length amount, Optional<String> stock, String sentence) {}

    /** The remedies for everything in a plan that is cut and no longer fits, best first for each part. */
    public static List<Remedy> of(Plan plan, Shop shop) {
        Assembly assembly = plan.assembly();
        BenchRemedies remedies = new BenchRemedies(
                plan.blanks(), shop, LengthFormat.of(assembly.piece().unit()));
        return FitCheck.misfits(assembly).stream()
                .flatMap(misfit -> remedies.remedies(misfit).stream())
                .toList();
    }

    /** The remedies for one misfit in one text. */
    Optional<String> told(Misfit misfit) {
        return Optional.of(String.join(
                " Or: ", remedies(misfit).stream().map(Remedy::sentence).toList()));
    }

    List<Remedy> remedies(Misfit misfit) {
        List<Remedy> remedies = new ArrayList<>();
        if (misfit.isTooBig()) {
            remedies.add(remedy(Kind.TAKE_OFF, misfit, takeOff(misfit)));
        } else if (misfit.over().abs().compareTo(limit("thickest shim")) <= 0) {
            remedies.add(
                    remedy(Kind.PACK_OUT, misfit, "Pack it out by %s where it goes.".formatted(words(misfit.over()))));
        }
        if (!misfit.isTooBig()) {
            remedies.add(cutNew(misfit));
        }
        return remedies;
    }

    private static Remedy remedy(Kind kind, Misfit misfit, String sentence) {
        return new Remedy(
                kind, misfit.part().path(), misfit.size(), misfit.over().abs(), Optional.empty(), sentence);
    }

    private String words(Length over) {
        return format.formatWithUnit(over.abs());
    }

    private static Length limit(String key) {
        return LIMITS.getRow("key", key).length("value");
    }

    /** Off the edge or end that nothing is measured from, so that every mark stays right. */
    private String takeOff(Misfit misfit) {
        Part part = misfit.part();
        boolean little = misfit.over().compareTo(limit("most planed off")) <= 0;
        String amount = words(misfit.over());
        return switch (misfit.size()) {
            case "length" ->
                "Cut %s off its far end (%s).".formatted(amount, side(part.lie().nearEnd()));
            case "width" ->
                "%s %s off the edge away from its face edge (%s)."
                        .formatted(
                                little ? "Plane" : "Saw",
                                amount,
                                side(part.lie().faceEdge()));
            default ->
                part.material().kind() == Material.Kind.SHEET
                        ? "Cut its groove or rabbet %s wider, or take a thinner sheet.".formatted(amount)
                        : "Plane %s off the side away from its face side.".formatted(amount);
        };
    }

    /** Where the other side of a marked one is when the piece stands. */
    private static String side(Side marked) {
        return switch (marked) {
            case LEFT -> "the right one";
            case RIGHT -> "the left one";
            case FRONT -> "the back one";
            case BACK -> "the front one";
            case TOP -> "the bottom one";
            case BOTTOM -> "the top one";
        };
    }

    private Remedy cutNew(Misfit misfit) {
        Optional<Stock> stock = blanks.stream()
                .filter(blank -> blank.part().equals(misfit.part().path()))
                .findFirst()
                .flatMap(blank -> smallest(blank, misfit));
        String where = stock.map(piece -> "%s %s in the rack (%s by %s) holds it."
                        .formatted(
                                piece instanceof Offcut ? "the offcut" : "the piece",
                                piece.id(),
                                format.format(piece.length()),
                                format.formatWithUnit(piece.width())))
                .orElse("nothing in the rack is large enough.");
        return new Remedy(
                Kind.CUT_NEW,
                misfit.part().path(),
                misfit.size(),
                Length.ZERO,
                stock.map(Stock::id),
                "Note it as spoilt and cut a new one: " + where);
    }

    /** The smallest piece that holds all rough pieces of a new blank side by side or end to end, so far as one piece can. */
    private Optional<Stock> smallest(Blank blank, Misfit misfit) {
        Part part = misfit.part();
        Length length = grown(blank.rough().length(), part.length());
        Length width = blank.strips() > 1
                ? blank.stripWidth().value()
                : grown(blank.rough().width(), part.width());
        Length ends = shop.allowances().endTrim().value().times(2);
        Length needed = part.material().kind() == Material.Kind.SHEET ? length : length.plus(ends);
        Length kerf = shop.allowances().kerf().value();
        Length side = width.plus(kerf).times(blank.pieces()).minus(kerf);
        return ofItsKind(blank)
                .filter(piece ->
                        piece.length().compareTo(needed) >= 0 && piece.width().compareTo(side) >= 0)
                .min(Comparator.comparingDouble(
                        piece -> piece.length().toMillimetres() * piece.width().toMillimetres()));
    }

    /** A rough size worked out from the size as cut, for the size as it is now planned. */
    private static Length grown(Dim rough, Dim size) {
        return rough.value().plus(size.planned().value().minus(size.value()));
    }

    private Stream<Stock> ofItsKind(Blank blank) {
        OnHand onHand = new OnHand(shop.rack());
        List<scantling.cutting.Stock> usable = switch (blank.material().kind()) {
            case SOLID ->
                blank.roughClass()
                        .map(rough -> onHand.boards(blank.material(), rough, Length.ZERO))
                        .orElse(List.of());
            case SHEET -> onHand.sheets(blank.material());
            case STICK -> onHand.sticks(blank, Length.ZERO);
        };
        return usable.stream().flatMap(one -> shop.rack().find(one.name()).stream());
    }
}
