package scantling.finishing;

import java.util.List;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.piece.Problem;

/**
 * The finish of a piece.
 *
 * @param faces every surface of every part
 * @param groups what gets which coats; those finished before assembly first
 * @param buy what is needed of each coat, all groups together
 * @param testBoard what to try first
 * @param findings what will not hold, dry or last
 * @param problems what in the text cannot be understood
 */
public record FinishPlan(
        List<Face> faces,
        List<FinishGroup> groups,
        List<Buy> buy,
        List<Trial> testBoard,
        List<Finding> findings,
        List<Problem> problems) {
    /** No wood, no finish. */
    public static final FinishPlan NONE =
            new FinishPlan(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /**
     * What is needed of one coat.
     *
     * @param coat which
     * @param litres as put on
     * @param tins sizes to buy in litres, the largest first: enough for the high estimate
     * @param hardener litres of hardener in it, for coats of two parts
     * @param thinner litres of thinner in it
     * @param mixing how it is mixed, a sentence; empty when it is used as it comes
     */
    public record Buy(
            Coat coat,
            Amount litres,
            List<Double> tins,
            Optional<Amount> hardener,
            Optional<Amount> thinner,
            String mixing) {
        /** Takes its own copy. */
        public Buy {
            tins = List.copyOf(tins);
        }
    }

    /** One strip of the test board. @param number from 1 @param what what to do on it @param look what to look for */
    public record Trial(int number, String what, String look) {}

    /** Takes its own copies. */
    public FinishPlan {
        faces = List.copyOf(faces);
        groups = List.copyOf(groups);
        buy = List.copyOf(buy);
        testBoard = List.copyOf(testBoard);
        findings = List.copyOf(findings);
        problems = List.copyOf(problems);
    }

    /** Square metres that take glue: each joint's two faces, halved. */
    public double glueArea() {
        return faces.stream().mapToDouble(Face::glued).sum() / 2;
    }

    /** Hours from the first coat to the last of the longest group, before it may be handled; nobody's hands are needed. */
    public Amount dryingHours() {
        Amount longest = Amount.ZERO;
        for (boolean before : new boolean[] {true, false}) {
            Amount most = groups.stream()
                    .filter(group -> group.beforeAssembly() == before)
                    .map(FinishPlan::hours)
                    .reduce(Amount.ZERO, (a, b) -> a.likely() >= b.likely() ? a : b);
            longest = longest.plus(most);
        }
        return longest;
    }

    private static Amount hours(FinishGroup group) {
        Amount sum = Amount.ZERO;
        for (int i = 0; i < group.coatings().size(); i++) {
            Coating.Drying drying = group.coatings().get(i).drying();
            sum = sum.plus(i == group.coatings().size() - 1 ? drying.handle() : drying.least());
        }
        return sum;
    }
}
