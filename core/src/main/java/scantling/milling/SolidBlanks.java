package scantling.milling;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.stock.Allowances;
import scantling.stock.RoughClass;

/** Blanks of solid wood: boards, glue-ups and laminations. */
final class SolidBlanks {
    private final Allowances allowances;
    private final List<RoughClass> sold;

    SolidBlanks(Allowances allowances, List<RoughClass> sold) {
        this.allowances = allowances;
        this.sold = sold;
    }

    Blank of(Part part) {
        Sizes last = Milling.last(part, allowances);
        Dim length = last.length().plus(allowances.length());
        Dim width = last.width().plus(allowances.width());
        Dim milled = last.thickness().plus(allowances.thickness());
        int strips = strips(width);
        int layers = layers(part, milled.value());
        Dim layer = layers == 1 ? milled : milled.share(1, layers);
        RoughClass from = roughClass(part, layers == 1 ? last.thickness() : layer);
        Dim stripWidth = strips == 1
                ? width
                : width.share(1, strips).plus(allowances.jointEdge().times(2));
        Sizes rough = new Sizes(length, width, from.rough());
        Sizes first = new Sizes(length, width, layers == 1 ? Dim.smallerOf(milled, from.rough()) : milled);
        return new Blank(
                part.path(),
                part.material(),
                rough,
                Optional.of(from),
                strips,
                stripWidth,
                layers,
                layers == 1 ? first.thickness() : layer,
                part.fitted(),
                first,
                last,
                Milling.isCut(part),
                Notes.solid(part, rough, from, strips, allowances));
    }

    /** One board as long as one can be bought so wide; else as few strips as stay below the widest, edges trued. */
    private int strips(Dim width) {
        if (width.value().compareTo(allowances.boardWidth().value()) <= 0) {
            return 1;
        }
        Length widest =
                allowances.widestStrip().value().min(allowances.boardWidth().value());
        Length glued = widest.minus(allowances.jointEdge().value().times(2));
        if (!glued.isPositive()) {
            throw new IllegalArgumentException("Strips of (%s) vanish when their edges are trued.".formatted(widest));
        }
        return Math.toIntExact(Milling.ceilingOf(width.value(), glued));
    }

    /** One as long as some class, or the one the maker named, planes to the part; else as few as the thickest gives. */
    private int layers(Part part, Length milled) {
        Length thickest = findNamed(part).orElse(thickest()).planesTo().value();
        return part.thickness().value().compareTo(thickest) <= 0
                ? 1
                : Math.toIntExact(Milling.ceilingOf(milled, thickest));
    }

    private RoughClass roughClass(Part part, Dim planed) {
        return findNamed(part)
                .or(() -> RoughClass.forFinished(planed.value(), sold))
                .orElse(thickest());
    }

    private RoughClass thickest() {
        return sold.stream().max(Comparator.comparing(RoughClass::planesTo)).orElseThrow();
    }

    /** The class that the maker buys this material in, where said. */
    private Optional<RoughClass> findNamed(Part part) {
        return part.material()
                .nominal()
                .flatMap(nominal -> RoughClass.all().stream()
                        .filter(one -> one.rough().equals(nominal))
                        .findFirst());
    }
}
