package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import scantling.checks.frame.Frames;
import scantling.checks.frame.Framing;
import scantling.checks.lasting.LastingChecks;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Starters;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** All checks of a piece, and its frame alone. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
@State(Scope.Benchmark)
public class ChecksBench {
    /** Which starter. */
    @Param({"bedside-chest", "kitchen"})
    public String starter = "";

    private Optional<Assembly> assembly = Optional.empty();

    /** Builds the starter once. */
    @Setup
    public void build() throws IOException {
        try (InputStream in = Starters.open(starter)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assembly = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                    .piece()
                    .map(piece -> Planner.assemble(piece, BenchLog.EMPTY, Shop.usual()));
        }
    }

    /** Every finding. */
    @Benchmark
    public List<Finding> checks() {
        Assembly whole = assembly.orElseThrow();
        List<Finding> findings = new ArrayList<>(AssemblyCheck.check(whole));
        findings.addAll(FitCheck.check(whole));
        findings.addAll(LastingChecks.check(whole));
        findings.addAll(FrameCheck.check(whole));
        return findings;
    }

    /** Its frame under every load, with and without its back. */
    @Benchmark
    public Optional<Framing> frame() {
        return Frames.of(assembly.orElseThrow());
    }
}
