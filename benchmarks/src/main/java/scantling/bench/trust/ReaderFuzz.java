package scantling.bench.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import scantling.construct.Construction;
import scantling.construct.Tolerances;
import scantling.cutting.CutJob;
import scantling.cutting.CutJson;
import scantling.cutting.CutPlan;
import scantling.cutting.SawCheck;
import scantling.measure.Ledger;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.piece.Piece;
import scantling.piece.PieceEditor;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/**
 * Feeds the readers texts made by their grammars, right and wrong: lengths, sums, pieces (read, and each hundredth built and
 * edited), jobs for the saw, saw plans real and changed, shops read in. Nothing may be thrown and nothing may take a second.
 */
public final class ReaderFuzz {
    private static final int LOOK_EVERY = 50_000;
    private static final int SHARES = 1000;

    private final Hand hand;
    private final Texts texts;
    private final SawPlanTexts plans;
    private final Tally tally = new Tally();
    private final Path place;
    private int shops;

    private ReaderFuzz(long seed, Path place) {
        this.hand = new Hand(seed);
        this.texts = new Texts(hand);
        this.plans = new SawPlanTexts(new Hand(seed));
        this.place = place;
    }

    /** @param args how many inputs, seed */
    public static void main(String[] args) throws IOException {
        long inputs = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path place = Files.createTempDirectory("fuzz");
        System.out.print(run(inputs, seed, place));
        Folders.delete(place);
    }

    /** Tries so many inputs. @param place an empty folder for shops that are read in */
    public static Tally run(long inputs, long seed, Path place) throws IOException {
        ReaderFuzz fuzz = new ReaderFuzz(seed, place);
        DamagedShops damaged = new DamagedShops(place.resolve("sound"), fuzz.hand);
        for (long i = 1; i <= inputs; i++) {
            fuzz.one(damaged);
            if (i % LOOK_EVERY == 0 || i == inputs) {
                fuzz.tally.weigh();
            }
        }
        return fuzz.tally;
    }

    private void one(DamagedShops damaged) throws IOException {
        int share = hand.below(SHARES);
        if (share < 400) {
            String text = texts.length();
            tally.take("length", text, () -> LengthReader.read(text, Unit.MM).isPresent());
        } else if (share < 650) {
            String text = texts.pieceOfSum();
            tally.take("sum", text, () -> read(text).piece().isPresent());
        } else if (share < 900) {
            piece(texts.piece());
        } else if (share < 998) {
            String text = texts.cutJob();
            tally.take("saw job", text, () -> CutJson.readJob(text).job().isPresent());
            sawPlan(hand.oneIn(4) ? text : plans.one());
        } else {
            shop(damaged);
        }
    }

    /** A plan that is taken must be sound still when it is written and read again, and be the same. */
    private void sawPlan(String text) {
        tally.take("saw plan", text, () -> {
            CutJson.ReadPlan read = CutJson.readPlan(text);
            if (read.plan().isEmpty()) {
                return false;
            }
            CutJob job = read.job().orElseThrow();
            CutPlan plan = read.plan().orElseThrow();
            CutJson.ReadPlan again = CutJson.readPlan(CutJson.writePlan(job, plan, 0));
            if (!again.problems().isEmpty()
                    || !again.job().equals(read.job())
                    || !again.plan().equals(read.plan())) {
                throw new AssertionError("A plan that was taken is another when it is written and read: " + again);
            }
            return SawCheck.problems(job, plan).isEmpty();
        });
    }

    private static ReadResult read(String text) {
        return PieceReader.read(text, Construction.language(), StandardWoods.standard());
    }

    private void piece(String text) {
        tally.take("piece", text, () -> read(text).piece().isPresent());
        if (hand.oneIn(40)) {
            tally.take(
                    "built",
                    text,
                    () -> read(text).piece().map(ReaderFuzz::isBuilt).orElse(false));
            tally.take(
                    "edited",
                    text,
                    () -> PieceEditor.givens(text, Construction.language()).stream()
                            .limit(3)
                            .allMatch(given -> PieceEditor.replace(
                                            text,
                                            Construction.language(),
                                            StandardWoods.standard(),
                                            given.path(),
                                            "12 mm")
                                    .text()
                                    .isPresent()));
        }
    }

    private static boolean isBuilt(Piece piece) {
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(Map.of(), piece.sizes(), tolerances.of("measured at the bench"));
        return Construction.assemble(piece, ledger, tolerances).problems().isEmpty();
    }

    private void shop(DamagedShops damaged) throws IOException {
        Path one = place.resolve("shop " + shops++);
        Path exported = damaged.make(one.resolve("exported"));
        tally.take("shop", exported.toString(), () -> DamagedShops.isReadIn(exported, one.resolve("into")));
        Folders.delete(one);
    }
}
