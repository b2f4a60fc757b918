package scantling.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.Effort;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;

/** The starters as text, as pieces and as plans. */
public final class Started {
    private Started() {}

    /** The text of a starter. */
    public static String text(String starter) {
        try (InputStream in = Starters.open(starter)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What its text says. */
    public static Piece piece(String starter) {
        return PieceReader.read(text(starter), Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
    }

    /** Its plan, nothing yet said by the bench. */
    public static Plan plan(String starter, Shop shop) {
        return Planner.plan(piece(starter), BenchLog.EMPTY, shop).plan();
    }

    /** The usual shop, with so many steps for each saw plan. */
    public static Shop shop(int steps) {
        Shop usual = Shop.usual();
        return new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(steps, 1));
    }
}
