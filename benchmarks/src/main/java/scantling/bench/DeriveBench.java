package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.Effort;
import scantling.piece.BenchLog;
import scantling.piece.Language;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.Woods;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** One edit to a piece: reading its text and deriving everything without a search for better saw plans. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
@State(Scope.Benchmark)
public class DeriveBench {
    /** Which starter. */
    @Param({"wall-shelf", "bedside-chest", "kitchen"})
    public String starter = "";

    private final Language language = Construction.language();
    private final Woods woods = StandardWoods.standard();
    private final Shop shop = unsearched();
    private String text = "";

    private static Shop unsearched() {
        Shop usual = Shop.usual();
        return new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(0, 1));
    }

    /** Reads the starter once. */
    @Setup
    public void read() throws IOException {
        try (InputStream in = Starters.open(starter)) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** From text to parts, joints, holes, coats, blanks, route and findings; saw plans as they first come. */
    @Benchmark
    public Plan derive() {
        Piece piece = PieceReader.read(text, language, woods).piece().orElseThrow();
        return Planner.plan(piece, BenchLog.EMPTY, shop).plan();
    }
}
