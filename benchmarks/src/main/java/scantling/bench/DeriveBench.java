package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
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
import scantling.checks.AssemblyCheck;
import scantling.checks.FitCheck;
import scantling.checks.frame.FrameCheck;
import scantling.checks.lasting.LastingChecks;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Starters;
import scantling.milling.Blank;
import scantling.milling.Milling;
import scantling.piece.BenchLog;
import scantling.piece.Language;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.Woods;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** One edit to a piece: reading its text and deriving everything but the saw plans. */
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
    private final Shop shop = Shop.usual();
    private String text = "";

    /** Reads the starter once. */
    @Setup
    public void read() throws IOException {
        try (InputStream in = Starters.open(starter)) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Everything that a derivation without saw plans gives. */
    public record Derived(List<Blank> blanks, List<Finding> findings) {}

    /** From text to blanks and findings. */
    @Benchmark
    public Derived derive() {
        Piece piece = PieceReader.read(text, language, woods).piece().orElseThrow();
        Assembly assembly = Planner.assemble(piece, BenchLog.EMPTY, shop);
        List<Finding> findings = new ArrayList<>(AssemblyCheck.check(assembly));
        findings.addAll(FitCheck.check(assembly));
        findings.addAll(LastingChecks.check(assembly));
        findings.addAll(FrameCheck.check(assembly));
        return new Derived(Milling.blanks(assembly, shop.allowances()), findings);
    }
}
