package scantling.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.stock.Allowances;
import scantling.stock.RoughClass;

/** Works out what every part is milled from. */
public final class Milling {
    /** Rough hardwood is sold from one inch up; thinner parts are planed or resawn from that (common practice). */
    private static final int THINNEST_QUARTERS = 4;

    private Milling() {}

    /** The blank of every part, in the order of the parts, from rough lumber of one inch and thicker. */
    public static List<Blank> blanks(Assembly assembly, Allowances allowances) {
        return blanks(assembly, allowances, soldRough());
    }

    /** The blank of every part. @param sold the rough classes that the shop can buy, at least one */
    public static List<Blank> blanks(Assembly assembly, Allowances allowances, List<RoughClass> sold) {
        if (sold.isEmpty()) {
            throw new IllegalArgumentException("Blanks need at least one rough class to choose from.");
        }
        SolidBlanks solid = new SolidBlanks(allowances, sold);
        List<Blank> blanks = new ArrayList<>();
        for (Part part : assembly.parts()) {
            blanks.add(
                    switch (part.material().kind()) {
                        case SOLID -> solid.of(part);
                        case SHEET -> sheet(part, allowances);
                        case STICK -> stick(part, allowances, mitres(assembly, part));
                    });
        }
        return List.copyOf(blanks);
    }

    private static List<RoughClass> soldRough() {
        return RoughClass.all().stream()
                .filter(one -> one.quarters().orElse(0) >= THINNEST_QUARTERS)
                .toList();
    }

    /** Cut to its finished size, or over it when it is trimmed to its place; thicker than the sheet, it is laminated. */
    private static Blank sheet(Part part, Allowances allowances) {
        Sizes cut = last(part, allowances);
        Dim sheet = part.material().thickness();
        int layers = layers(part.thickness().value(), sheet.value());
        Sizes rough = new Sizes(cut.length(), cut.width(), layers == 1 ? part.thickness() : sheet);
        List<String> notes = new ArrayList<>(Notes.shaped(part));
        if (layers > 1) {
            notes.add("Laminate %d layers of sheet, then trim all edges at once.".formatted(layers));
        }
        return new Blank(
                part.path(),
                part.material(),
                rough,
                Optional.empty(),
                1,
                cut.width(),
                layers,
                rough.thickness(),
                part.fitted(),
                cut,
                cut,
                isCut(part),
                notes);
    }

    private static int layers(Length thickness, Length sheet) {
        if (!sheet.isPositive() || thickness.compareTo(sheet) <= 0) {
            return 1;
        }
        return Math.toIntExact(ceilingOf(thickness, sheet));
    }

    /** Bought to section: only its length is cut, with something over at each mitred end to try the mitre on. */
    private static Blank stick(Part part, Allowances allowances, int mitres) {
        Sizes last = new Sizes(
                part.fitted() ? part.length().plus(allowances.leftLong()) : part.length(),
                part.width(),
                part.thickness());
        Sizes rough =
                new Sizes(last.length().plus(allowances.leftLong().times(mitres)), part.width(), part.thickness());
        return new Blank(
                part.path(),
                part.material(),
                rough,
                Optional.empty(),
                1,
                part.width(),
                1,
                part.thickness(),
                part.fitted(),
                rough,
                last,
                isCut(part),
                Notes.shaped(part));
    }

    /** How many of its two ends are mitred. */
    private static int mitres(Assembly assembly, Part part) {
        long mitred = assembly.joints().stream()
                .filter(joint -> joint.kind().isMitred())
                .filter(joint -> joint.entering().equals(part.path())
                        || joint.receiving().equals(part.path()))
                .count();
        return (int) Math.min(2, mitred);
    }

    /** Its sizes when the milling is done: finished, or still over where it is trimmed to its place. */
    static Sizes last(Part part, Allowances allowances) {
        return part.fitted()
                ? new Sizes(
                        part.length().plus(allowances.leftLong()),
                        part.width().plus(allowances.leftLong()),
                        part.thickness())
                : new Sizes(part.length(), part.width(), part.thickness());
    }

    /** Whether the bench has measured it as cut. */
    static boolean isCut(Part part) {
        return part.length().isMeasured() || part.width().isMeasured();
    }

    /** The least whole number of steps that reach a length. */
    static long ceilingOf(Length length, Length step) {
        return length.roundedUpTo(step).tenthNanometres() / step.tenthNanometres();
    }
}
