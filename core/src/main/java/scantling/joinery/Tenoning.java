package scantling.joinery;

import java.util.Optional;
import scantling.construct.Finding;
import scantling.measure.Dim;
import scantling.measure.Rounding;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** How long and how wide tenons are, loose or not. */
final class Tenoning {
    private Tenoning() {}

    /** How far a tenon goes into each part: as said or as is usual, and never so far that too little wood stays behind it. */
    static Dim reach(Meeting at, Bench bench) {
        JointRules rules = bench.rules();
        Dim wanted = at.joint().sizes().getOrDefault("length", rules.length("tenon length"));
        Dim room = at.room(true);
        Dim most = room.minus(rules.behind(room)).minus(rules.length("glue room"));
        if (wanted.compareTo(most) <= 0) {
            return wanted;
        }
        boolean said = at.joint().sizes().containsKey("length");
        if (said && wanted.plus(rules.length("least behind a hole")).compareTo(room) <= 0) {
            return wanted;
        }
        Dim less = most.rounded(rules.length("round").value(), Rounding.DOWN);
        if (said) {
            bench.find(
                    Finding.Severity.CAUTION,
                    at,
                    "A tenon %s long would break out of %s, which is %s there; it was made %s."
                            .formatted(
                                    bench.sayUnit(wanted),
                                    at.receiving().path(),
                                    bench.sayUnit(room),
                                    bench.sayUnit(less)),
                    "common practice",
                    "Write tenon length: %s for %s, or make %s thicker."
                            .formatted(
                                    bench.sayUnit(less),
                                    at.entering().path(),
                                    at.receiving().path()),
                    wanted,
                    room,
                    less);
        }
        return less;
    }

    /** How a loose tenon fits. @param reach into each part @param from offset along the joint @param to likewise */
    record Fit(Dim reach, Dim from, Dim to) {
        double area() {
            return Row.mm(reach) * (Row.mm(to) - Row.mm(from));
        }
    }

    /** The loose tenon with the most glue: shorter where that lets it be wider beside what is already cut there. */
    static Optional<Fit> best(Meeting at, Bench bench, Dim thick) {
        Dim most = reach(at, bench);
        Optional<Fit> best = Optional.empty();
        for (Dim reach = most; reach.compareTo(most.half()) >= 0; reach = shorter(reach, bench)) {
            Dim into = reach;
            Dim deep = reach.plus(bench.rules().length("glue room"));
            Optional<Fit> fit = width(at, bench, thick, deep, deep).map(wide -> new Fit(into, wide[0], wide[1]));
            if (fit.isPresent()
                    && (best.isEmpty() || fit.get().area() > best.get().area())) {
                best = fit;
            }
            if (fit.isPresent() && fit.get().area() >= undisturbed(at, bench, reach) - 1) {
                break;
            }
        }
        return best;
    }

    private static double undisturbed(Meeting at, Bench bench, Dim reach) {
        double shoulders = Row.mm(shoulder(at, bench, false)) + Row.mm(shoulder(at, bench, true));
        return Row.mm(reach) * (Row.mm(at.runSize()) - shoulders);
    }

    private static Dim shorter(Dim reach, Bench bench) {
        return reach.minus(bench.rules().length("reach step"));
    }

    /** From where to where a tenon stands along the joint, as offsets; nothing when no free stretch is wide enough. */
    static Optional<Dim[]> width(Meeting at, Bench bench, Dim thick, Dim deepE, Dim deepR) {
        Box whole = InTheWay.whole(at, thick);
        Row row = Row.clearOf(
                at,
                bench,
                at.pocket(whole, deepE, false),
                at.pocket(whole, deepR, true),
                bench.rules().length("clear of another"));
        double from = Row.mm(shoulder(at, bench, false));
        double to = Row.mm(at.runSize()) - Row.mm(shoulder(at, bench, true));
        return row.longest(from, to, 2 * Row.mm(thick));
    }

    /** The shoulder at one end of the place: wide where the receiving part ends there. */
    static Dim shoulder(Meeting at, Bench bench, boolean far) {
        JointRules rules = bench.rules();
        Axis run = at.run();
        Side side = Side.of(run, far);
        Dim beyond = far
                ? at.receiving().box().plane(side).minus(at.end(run))
                : at.start(run).minus(at.receiving().box().plane(side));
        boolean nearEnd = at.receiving().lie().length() == run && beyond.compareTo(rules.length("near an end")) < 0;
        Dim share = rules.share(nearEnd ? "end shoulder" : "tenon shoulder")
                .of(at.runSize())
                .rounded(rules.length("round").value(), Rounding.NEAREST);
        Dim least = rules.length("least shoulder");
        Dim most = rules.length("widest end shoulder");
        return share.compareTo(least) < 0 ? least : share.compareTo(most) > 0 ? most : share;
    }
}
