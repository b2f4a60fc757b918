package scantling.packet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import scantling.checks.Fits;
import scantling.checks.frame.Frames;
import scantling.checks.frame.Framing;
import scantling.checks.lasting.Year;
import scantling.drawing.Drawing;
import scantling.drawing.FrameDrawing;
import scantling.drawing.YearChart;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.space.Axis;

/**
 * Whether it will last, as it stands on the pages.
 *
 * @param frame the piece pushed at its top, when it is a frame
 * @param year the year in the client's home, when something moves in it
 * @param rest how dry lumber should be before it is milled, or empty
 * @param loads what each load of the furniture tests does
 * @param fits those nearest to failing
 * @param boards what lies flat and spans
 * @param moves what moves across its grain
 * @param gaps what is set into openings, month by month
 */
public record LastingPages(
        Optional<Drawing> frame,
        Optional<Drawing> year,
        String rest,
        List<LoadRow> loads,
        List<FitRow> fits,
        List<LastingRows.Board> boards,
        List<LastingRows.Move> moves,
        List<LastingRows.Gap> gaps) {
    private static final int MOST_FITS = 12;

    /** What one load does. @param load in words @param gives how far @param where on what @param joint most loaded, with its share of what it bears */
    public record LoadRow(String load, String gives, String where, String joint) {}

    /** A fit. @param opening its path @param what reveal, clearance or flushness @param planned by the plan @param worst off at worst @param usual off as errors usually add */
    public record FitRow(String opening, String what, String planned, String worst, String usual) {}

    static LastingPages of(PacketContent content) {
        LengthFormat format = content.format().ofEstimates();
        Optional<Framing> framing = Frames.of(content.assembly(), content.features());
        return new LastingPages(
                framing.flatMap(solved -> FrameDrawing.of(solved, format)),
                YearChart.of(content.assembly(), format),
                Year.of(content.assembly()).map(Year::rest).orElse(""),
                framing.stream()
                        .flatMap(solved -> solved.cases().stream())
                        .map(each -> load(each, format))
                        .toList(),
                Fits.of(content.assembly()).stream()
                        .limit(MOST_FITS)
                        .map(fit -> fit(fit, format))
                        .toList(),
                LastingRows.boards(content.assembly(), format),
                LastingRows.moves(content.assembly(), format),
                LastingRows.gaps(content.assembly(), format));
    }

    private static LoadRow load(Framing.Case each, LengthFormat format) {
        String joint = each.worst()
                .map(worst -> String.format(
                        Locale.ROOT, "%s, %.0f %% of what such joints held", worst.joint(), 100 * worst.ratio()))
                .orElse("none with a published strength");
        Length moved = Length.ofMillimetres(each.most());
        return new LoadRow(each.load().words(), format.formatWithUnit(fine(moved, format)), each.where(), joint);
    }

    private static FitRow fit(Fits.Fit fit, LengthFormat format) {
        String way = fit.kind() == Fits.Kind.REVEAL ? fit.axis() == Axis.UP ? ", top to bottom" : ", side to side" : "";
        return new FitRow(
                fit.opening(),
                fit.kind().word() + way,
                format.formatWithUnit(fit.planned().value()),
                format.formatWithUnit(fine(fit.spread().worstCase(), format)),
                format.formatWithUnit(fine(fit.spread().rootSumSquare(), format)));
    }

    private static Length fine(Length length, LengthFormat format) {
        return length.roundedTo(format.inches() ? Length.inches(1, 64) : Length.mm("0.1"));
    }

    /** Whether there is anything to say. */
    public boolean says() {
        return frame.isPresent() || year.isPresent() || !fits.isEmpty() || !boards.isEmpty();
    }
}
