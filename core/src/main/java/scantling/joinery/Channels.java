package scantling.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.feature.Feature;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A dado or a groove, through or stopped: as wide as what enters is thick, as deep as the joint says, stopped where what enters ends. */
final class Channels implements JointMaker {
    private final boolean stopped;

    /** @param stopped whether it stops short of the edge that shows */
    Channels(boolean stopped) {
        this.stopped = stopped;
    }

    @Override
    public void make(Meeting at, Bench bench) {
        if (!at.depth().value().isPositive()) {
            return;
        }
        Axis wide = Channel.width(at);
        Axis run = wide.third(at.side().axis());
        Dim said = at.joint().sizes().getOrDefault("depth", at.depth());
        Dim deep = said.compareTo(at.depth()) >= 0 ? said : at.depth();
        Box place = widened(at, wide);
        Dim width = place.extent(wide);
        Dim bit = Channel.bit(bench, width);
        Box box = at.pocket(place, deep, true);
        for (boolean far : new boolean[] {false, true}) {
            box = ended(at, bench, box, Side.of(run, far), bit, Channel.clearance(at, deep));
        }
        if (stopped) {
            box = Stopping.shortened(at, bench, box, Stopping.end(at, run));
        }
        boolean across = run != at.receiving().lie().length();
        Optional<Dim> ends = Channel.ends(at, box, run, bit);
        List<String> notes = new ArrayList<>(Channel.cuts(bench, bit, width));
        ends.ifPresent(radius -> notes.add(
                "Stopped: the bit leaves the ends round, radius %s, beyond the end of what goes in where there is room; square them where there is not."
                        .formatted(bench.sayUnit(radius))));
        bench.cut(
                at,
                true,
                box,
                new Bench.Cut(
                        across ? "dado" : "groove",
                        across ? Feature.Kind.DADO : Feature.Kind.GROOVE,
                        at.surface(true),
                        ends,
                        Fences.router(bench, bit, Channel.fence(at, box, wide), deep, notes)));
        bench.choose(
                at,
                "as the piece says, or as is usual there",
                "%s %s wide and %s deep in %s, which is %s: it is as wide as %s is thick.%s"
                        .formatted(
                                across ? "dado" : "groove",
                                bench.say(width),
                                bench.say(deep),
                                at.receiving().path(),
                                bench.say(at.room(true)),
                                at.entering().path(),
                                Strengths.UNKNOWN),
                width,
                deep,
                at.room(true));
        Weakness.channel(at, bench, deep);
    }

    /** The place across the channel: what enters, or as wide as the joint says around it. */
    private static Box widened(Meeting at, Axis wide) {
        Dim have = at.shared().extent(wide);
        Dim said = at.joint().sizes().getOrDefault("width", have);
        Dim more = said.minus(have);
        if (!more.value().isPositive()) {
            return at.shared();
        }
        Dim out = Dim.ZERO.minus(more.half());
        return at.shared().inset(Side.of(wide, false), out).inset(Side.of(wide, true), out);
    }

    /** Runs on by the air of the joint and, if enough wood is left, by the round of the bit. */
    private static Box ended(Meeting at, Bench bench, Box box, Side end, Dim bit, Dim clearance) {
        if (Channel.runsOut(at, box, end)) {
            return box;
        }
        Dim more = clearance.plus(bit.half());
        Dim left = Channel.beyond(at, box, end).minus(more);
        boolean room = left.compareTo(bench.rules().length("least behind a hole")) >= 0;
        return Channel.longer(at, box, end, room ? more : clearance);
    }
}
