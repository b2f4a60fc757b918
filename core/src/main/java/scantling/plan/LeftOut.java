package scantling.plan;

import java.util.List;
import java.util.stream.Collectors;
import scantling.construct.Finding;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.CutPlan;
import scantling.cutting.Matches;
import scantling.cutting.Stock;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.piece.Material;

/** Parts that no stock holds, as findings: how far they are over, and what to do about it. */
final class LeftOut {
    private final CutGroup group;
    private final LengthFormat format;

    private LeftOut(CutGroup group, LengthFormat format) {
        this.group = group;
        this.format = format;
    }

    static List<Finding> findings(List<CutGroup> cuts, LengthFormat format) {
        return cuts.stream()
                .flatMap(group -> group.plan().leftOut().stream().map(left -> new LeftOut(group, format).finding(left)))
                .toList();
    }

    private Finding finding(CutPlan.LeftOut left) {
        CutPart part = left.part();
        boolean large = !Matches.isMatched(part) && group.job().stock().stream().noneMatch(stock -> holds(stock, part));
        return new Finding(
                Finding.Severity.STOP,
                part.name(),
                large ? tooLarge(part) : Matches.isMatched(part) ? matched(part) : tooMany(left),
                List.of(),
                "saw plan of %s".formatted(group.title()),
                large
                        ? remedy(part)
                        : Matches.isMatched(part) ? "Match fewer under \"matched\", or take it out." : more());
    }

    private String matched(CutPart part) {
        CutPart whole = Matches.whole(group.job(), part);
        return "%s is matched with %s: cut next to each other they are %s, and nothing that is left holds them."
                .formatted(
                        part.name(),
                        Matches.with(group.job(), part).stream()
                                .map(CutPart::name)
                                .filter(name -> !name.equals(part.name()))
                                .collect(Collectors.joining(", ")),
                        size(whole.length(), whole.width()));
    }

    private boolean holds(Stock stock, CutPart part) {
        return fits(stock, part.length(), part.width()) || part.turn() && fits(stock, part.width(), part.length());
    }

    private boolean fits(Stock stock, Length length, Length width) {
        CutJob job = group.job();
        Length off = job.saw().trimOf(stock).times(2);
        boolean stick = stock.width().isZero();
        return length.compareTo(stock.length().minus(off)) <= 0
                && (stick || width.compareTo(stock.width().minus(off)) <= 0);
    }

    private String tooLarge(CutPart part) {
        String sizes = group.job().stock().stream()
                .map(stock -> usable(stock))
                .distinct()
                .collect(Collectors.joining(", "));
        return "%s, %s rough, is larger than anything it can be cut from: %s once trimmed."
                .formatted(part.name(), size(part.length(), part.width()), sizes);
    }

    private String usable(Stock stock) {
        Length off = group.job().saw().trimOf(stock).times(2);
        return size(
                stock.length().minus(off),
                stock.width().isZero() ? Length.ZERO : stock.width().minus(off));
    }

    private String tooMany(CutPlan.LeftOut left) {
        return "There is not enough %s for %d of %s, %s rough."
                .formatted(
                        group.material().name(),
                        left.count(),
                        left.part().name(),
                        size(left.part().length(), left.part().width()));
    }

    private String size(Length length, Length width) {
        return width.isZero()
                ? format.formatWithUnit(length)
                : "%s x %s".formatted(format.format(length), format.formatWithUnit(width));
    }

    private String remedy(CutPart part) {
        boolean turned = !part.turn()
                && group.job().stock().stream().anyMatch(stock -> fits(stock, part.width(), part.length()));
        String name = group.material().name();
        if (turned) {
            return "It fits lying across: say \"grain: no\" for %s if its grain need not match, or list a longer sheet."
                    .formatted(name);
        }
        return group.material().kind() == Material.Kind.SHEET
                ? "List a larger sheet under materials / %s / sheets, or join the part from two.".formatted(name)
                : "List a longer or wider board under materials / %s / boards, or join the part from two."
                        .formatted(name);
    }

    private String more() {
        return switch (group.material().kind()) {
            case SHEET ->
                "List more sheets, or a greater count, under materials / %s / sheets."
                        .formatted(group.material().name());
            case SOLID ->
                "List more boards under materials / %s / boards; defects may have to be marked less widely."
                        .formatted(group.material().name());
            case STICK -> "Buy another stick.";
        };
    }
}
