package scantling.packet;

import scantling.measure.LengthFormat;
import scantling.plan.Plan;
import scantling.plan.Started;

/** What the packet of a starter shows. */
final class StarterPapers {
    private StarterPapers() {}

    static String text(String starter) {
        return Started.text(starter);
    }

    static PacketContent content(String starter, LengthFormat format) {
        return Packet.of(plan(starter), format).content();
    }

    static Plan plan(String starter) {
        return Started.plan(starter, Started.shop(20));
    }
}
