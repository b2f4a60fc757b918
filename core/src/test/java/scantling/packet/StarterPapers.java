package scantling.packet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.Effort;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** What the packet of a starter shows. */
final class StarterPapers {
    private StarterPapers() {}

    static String text(String starter) {
        try (InputStream in = Starters.open(starter)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    static PacketContent content(String starter, LengthFormat format) {
        return Packet.of(plan(starter), format).content();
    }

    static Plan plan(String starter) {
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(20, 1));
        Piece piece = PieceReader.read(text(starter), Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        return Planner.plan(piece, BenchLog.EMPTY, shop).plan();
    }
}
