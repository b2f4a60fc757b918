package scantling.packet;

import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.drawing.CutSheet;
import scantling.feature.Features;
import scantling.finishing.FinishPlan;
import scantling.measure.LengthFormat;
import scantling.route.Route;

/**
 * Everything a packet shows.
 *
 * @param assembly the piece
 * @param features what is taken from its parts, and why so
 * @param groups its parts, marked
 * @param blanks rough wood, in the order it is milled
 * @param sheets cutting diagrams, one for each piece of stock
 * @param diagrams the same with pieces of stock that are cut alike drawn once
 * @param finish what goes on the wood
 * @param buying what to buy
 * @param route everything done to it, in order
 * @param findings what is to be said about the plan
 * @param format how figures are written
 * @param job what is said of the job
 * @param days when it is done, where a beginning is said
 * @param shown what is shown to others
 */
public record PacketContent(
        Assembly assembly,
        Features features,
        List<PartGroup> groups,
        List<BlankRow> blanks,
        List<CutSheet> sheets,
        List<CutSheet> diagrams,
        FinishPlan finish,
        List<BuyRow> buying,
        Route route,
        List<Finding> findings,
        LengthFormat format,
        JobLines job,
        Optional<Days> days,
        Shown shown) {
    /** One of which nothing is said about finish and buying. */
    public PacketContent(
            Assembly assembly,
            Features features,
            List<PartGroup> groups,
            List<BlankRow> blanks,
            List<CutSheet> sheets,
            Route route,
            List<Finding> findings,
            LengthFormat format,
            JobLines job) {
        this(
                assembly,
                features,
                groups,
                blanks,
                sheets,
                sheets,
                FinishPlan.NONE,
                List.of(),
                route,
                findings,
                format,
                job,
                Optional.empty(),
                Shown.NOTHING);
    }

    /** Takes its own copies. */
    public PacketContent {
        groups = List.copyOf(groups);
        blanks = List.copyOf(blanks);
        sheets = List.copyOf(sheets);
        diagrams = List.copyOf(diagrams);
        buying = List.copyOf(buying);
        findings = List.copyOf(findings);
    }
}
