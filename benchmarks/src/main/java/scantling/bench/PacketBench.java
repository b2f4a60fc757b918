package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.measure.LengthFormat;
import scantling.packet.Packet;
import scantling.packet.PacketPdf;
import scantling.packet.Paper;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** The packet of a piece that is planned already: every drawing drawn, every sheet laid out and written as PDF. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
@State(Scope.Benchmark)
public class PacketBench {
    /** Which starter. */
    @Param({"bookcase", "bedside-chest"})
    public String starter = "";

    private Optional<Packet> packet = Optional.empty();

    /** Plans the starter once. */
    @Setup
    public void plan() throws IOException {
        try (InputStream in = Starters.open(starter)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            packet = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                    .piece()
                    .map(piece -> Planner.plan(piece, BenchLog.EMPTY, Shop.usual()))
                    .map(outcome -> Packet.of(outcome.plan(), LengthFormat.MM));
        }
    }

    /** The packet as PDF. */
    @Benchmark
    public byte[] paper() {
        return PacketPdf.render(packet.orElseThrow().content(), Paper.A4);
    }
}
