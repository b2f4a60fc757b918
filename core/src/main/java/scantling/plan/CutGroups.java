package scantling.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.Saw;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.milling.Blank;
import scantling.piece.Material;
import scantling.stock.Allowances;
import scantling.stock.BoardMeasure;
import scantling.stock.Grade;
import scantling.stock.RoughClass;
import scantling.timber.Panel;
import scantling.timber.PanelTable;

/** Sorts blanks into what one saw plan cuts, and asks for the plans: one for each material and rough thickness. */
final class CutGroups {
    /** Boards that are not long or wide enough are bought longer in steps of two feet, wider in steps of an inch. */
    private static final Length LENGTH_STEP = Length.inches(24);

    private static final Length WIDTH_STEP = Length.inches(1);

    private final Shop shop;
    private final LengthFormat format;
    private final SawnBlanks sawn;
    private final Matched matched;
    private final OnHand onHand;
    private final ForSale forSale;
    private final Cutter cutter;

    CutGroups(Shop shop, LengthFormat format, SawnBlanks sawn, Matched matched, Cutter cutter) {
        this.matched = matched;
        this.cutter = cutter;
        this.shop = shop;
        this.format = format;
        this.sawn = sawn;
        this.onHand = new OnHand(shop.rack());
        this.forSale = new ForSale(format);
    }

    /** What makes blanks one group. */
    private record Key(Material material, String thickness) {}

    List<CutGroup> of(List<Blank> blanks) {
        Map<Key, List<Blank>> groups = new LinkedHashMap<>();
        for (Blank blank : blanks) {
            if (!blank.alreadyCut() && sawn.left(blank) > 0) {
                groups.computeIfAbsent(key(blank), key -> new ArrayList<>()).add(blank);
            }
        }
        return groups.entrySet().stream()
                .map(entry -> group(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** All blanks by the title of the saw plan they belong to, those already sawn or cut among them. */
    Map<String, List<Blank>> titled(List<Blank> blanks) {
        Map<String, List<Blank>> titled = new LinkedHashMap<>();
        blanks.forEach(blank -> titled.computeIfAbsent(title(key(blank)), title -> new ArrayList<>())
                .add(blank));
        return titled;
    }

    private static String title(Key key) {
        String kind = switch (key.material().kind()) {
            case SOLID -> "boards";
            case SHEET -> "sheets";
            case STICK -> "sticks";
        };
        return "%s, %s, %s %s".formatted(key.material().name(), key.material().of(), key.thickness(), kind);
    }

    private Key key(Blank blank) {
        String thickness = blank.roughClass()
                .map(rough -> rough.name())
                .orElseGet(() -> format.formatWithUnit(blank.rough().thickness().value()));
        return new Key(blank.material(), thickness);
    }

    private CutGroup group(Key key, List<Blank> blanks) {
        CutJob job = switch (key.material().kind()) {
            case SOLID -> boards(key.material(), blanks);
            case SHEET -> sheets(key.material(), blanks);
            case STICK -> sticks(key.material(), blanks);
        };
        Map<String, Grade> grades = onHand.grades(key.material());
        grades.putAll(forSale.grades(key.material()));
        return new CutGroup(title(key), key.material(), job, cutter.plan(job, shop.effort()), grades);
    }

    private CutJob boards(Material material, List<Blank> blanks) {
        Allowances allowances = shop.allowances();
        RoughClass rough = blanks.get(0).roughClass().orElseThrow();
        List<CutPart> parts = parts(blanks, false);
        Length end = allowances.endTrim().value();
        List<Stock> stock = new ArrayList<>(onHand.boards(material, rough, end));
        List<Stock> listed = forSale.boards(material, rough, end);
        stock.addAll(listed.isEmpty() ? List.of(typical(material, rough, parts)) : listed);
        return new CutJob(
                Saw.of(allowances.kerf().value()),
                keep(),
                stock,
                parts,
                shop.sawing().wishes());
    }

    /** A board as the yard has them, longer or wider where a part needs it. */
    private Stock typical(Material material, RoughClass rough, List<CutPart> parts) {
        Allowances allowances = shop.allowances();
        Length ends = allowances.endTrim().value().times(2);
        Length length =
                longEnough(longest(parts).plus(ends), allowances.boardLength().value(), LENGTH_STEP);
        Length width = longEnough(widest(parts), allowances.boardWidth().value(), WIDTH_STEP);
        long cost = material.price()
                .map(price -> Math.round(price * BoardMeasure.boardFeet(rough, width, length)))
                .orElseGet(() -> ForSale.area(length, width));
        String name = "board to buy, %s x %s".formatted(format.format(length), format.formatWithUnit(width));
        return new Stock.BoardStock(name, length.minus(ends), width, OptionalInt.empty(), cost, false);
    }

    private CutJob sheets(Material material, List<Blank> blanks) {
        Saw saw = new Saw(
                shop.allowances().sheetKerf().value(),
                shop.allowances().edgeTrim().value(),
                shop.sawing().stages(),
                shop.sawing().firstCut());
        List<Stock> stock = new ArrayList<>(onHand.sheets(material));
        stock.addAll(forSale.sheets(material));
        Wishes wishes = shop.sawing().wishes().withNearEdge(isHeavy(material, stock));
        return new CutJob(saw, keep(), stock, parts(blanks, !material.grained()), wishes);
    }

    /** Whether one person cannot lift a whole sheet of it. */
    private boolean isHeavy(Material material, List<Stock> stock) {
        double largest = stock.stream()
                .mapToDouble(one -> one.length().toMetres() * one.width().toMetres())
                .max()
                .orElse(0);
        OptionalDouble density =
                PanelTable.standard().find(material.of()).map(Panel::density).orElse(OptionalDouble.empty());
        return density.isPresent()
                && largest * material.thickness().value().toMetres() * density.getAsDouble()
                        > shop.sawing().lift();
    }

    private CutJob sticks(Material material, List<Blank> blanks) {
        List<CutPart> parts = blanks.stream()
                .map(blank -> CutPart.stick(blank.part(), blank.rough().length().value(), sawn.left(blank)))
                .toList();
        Length ends = shop.allowances().endTrim().value().times(2);
        Length length = longEnough(
                longest(parts).plus(ends), shop.allowances().boardLength().value(), LENGTH_STEP);
        long cost = material.price().orElseGet(() -> ForSale.area(length, Length.mm(1)));
        List<Stock> stock = new ArrayList<>(onHand.sticks(blanks.get(0), ends));
        stock.add(new Stock.StickStock(
                "stick, %s".formatted(format.formatWithUnit(length)), length.minus(ends), OptionalInt.empty(), cost));
        return new CutJob(
                Saw.of(shop.allowances().kerf().value()),
                keep(),
                stock,
                parts,
                shop.sawing().wishes());
    }

    private List<CutPart> parts(List<Blank> blanks, boolean turn) {
        List<CutPart> parts =
                matched.ordered(blanks.stream().map(blank -> part(blank, turn)).toList());
        return parts.stream().map(part -> whole(part, parts)).toList();
    }

    /** A set takes one of each: parts of several strips, or some of them sawn, are cut apart. */
    private static CutPart whole(CutPart part, List<CutPart> parts) {
        boolean side = isWhole(part.beside(), CutPart::beside, parts);
        return isWhole(part.row(), CutPart::row, parts)
                ? part.lyingBeside(side ? part.beside() : "")
                : part.inRow("").lyingBeside("");
    }

    private static boolean isWhole(String set, Function<CutPart, String> in, List<CutPart> parts) {
        return set.isEmpty()
                || parts.stream()
                                .filter(part -> in.apply(part).equals(set))
                                .map(CutPart::count)
                                .distinct()
                                .count()
                        == 1;
    }

    private CutPart part(Blank blank, boolean turn) {
        CutPart part = new CutPart(
                blank.part(),
                blank.rough().length().value(),
                blank.strips() > 1
                        ? blank.stripWidth().value()
                        : blank.rough().width().value(),
                sawn.left(blank),
                turn);
        return matched.in(blank.strips() > 1 ? part.asStrips() : part);
    }

    private CutJob.Keep keep() {
        return new CutJob.Keep(
                shop.allowances().offcutLength().value(),
                shop.allowances().offcutWidth().value());
    }

    private static Length longEnough(Length needed, Length typical, Length step) {
        return needed.compareTo(typical) <= 0 ? typical : needed.roundedUpTo(step);
    }

    private static Length longest(List<CutPart> parts) {
        return parts.stream().map(CutPart::length).reduce(Length.ZERO, Length::max);
    }

    private static Length widest(List<CutPart> parts) {
        return parts.stream().map(CutPart::width).reduce(Length.ZERO, Length::max);
    }
}
