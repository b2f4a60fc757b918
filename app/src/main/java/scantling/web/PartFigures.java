package scantling.web;

import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.milling.Blank;
import scantling.milling.Sizes;
import scantling.route.Step;
import scantling.web.BenchCard.Dial;

/** The figures of a part that stand on a card. */
final class PartFigures {
    private final BenchCards all;

    PartFigures(BenchCards all) {
        this.all = all;
    }

    /** What this step makes of it. @param cut whether it comes to its size there */
    List<Dial> of(Step step, Part part, boolean cut) {
        Optional<Blank> blank = all.plan().blanks().stream()
                .filter(one -> one.part().equals(part.path()))
                .findFirst();
        return switch (step) {
            case FIRST_MILL ->
                blank.map(one -> one.strips() > 1
                                ? List.of(all.dial(
                                        "Thickness", one.first().thickness().value()))
                                : milled(one.first()))
                        .orElse(List.of());
            case GLUE_BLANK ->
                blank.map(one -> List.of(
                                new Dial("Pieces", Integer.toString(one.pieces()), ""),
                                all.dial("Width", one.rough().width().value())))
                        .orElse(List.of());
            case FINAL_MILL -> blank.map(one -> milled(one.last())).orElse(List.of());
            case CUT_TO_LENGTH ->
                List.of(all.dial(
                        "Length",
                        blank.filter(Blank::keptLong)
                                .map(one -> one.last().length())
                                .orElse(part.length())
                                .value()));
            case MARK ->
                cut
                        ? List.of(
                                all.dial("Length", part.length().value()),
                                all.dial("Width", part.width().value()))
                        : List.of();
            default -> List.of();
        };
    }

    private List<Dial> milled(Sizes sizes) {
        return List.of(
                all.dial("Thickness", sizes.thickness().value()),
                all.dial("Width", sizes.width().value()));
    }
}
