package scantling.bench;

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
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;

/** The first sound saw plan of a made-up kitchen of 100 parts, its bound and its check with it. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
@State(Scope.Benchmark)
public class FirstPlanBench {
    private static final int PARTS = 100;

    /** Which parts. */
    @Param({"CABINETS", "SCATTERED"})
    public KitchenMix mix = KitchenMix.CABINETS;

    private CutJob job = KitchenMix.CABINETS.job(PARTS, PARTS);

    /** Makes the job once. */
    @Setup
    public void make() {
        job = mix.job(PARTS, PARTS);
    }

    /** No steps of search. */
    @Benchmark
    public CutPlan first() {
        return SawPlans.plan(job, new Effort(0, 1), () -> false);
    }
}
