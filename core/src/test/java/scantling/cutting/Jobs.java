package scantling.cutting;

import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import scantling.measure.Length;

/** Small builders for the tests of this package. */
final class Jobs {
    private Jobs() {}

    static Length mm(String text) {
        return Length.mm(text);
    }

    static Stock sheet(long length, long width, long cost) {
        return new Stock.SheetStock("sheet", Length.mm(length), Length.mm(width), OptionalInt.empty(), cost);
    }

    static Stock stick(long length) {
        return new Stock.StickStock("stick", Length.mm(length), OptionalInt.empty(), 1);
    }

    static CutPart part(String name, long length, long width, int count) {
        return new CutPart(name, Length.mm(length), Length.mm(width), count, false);
    }

    static CutPart turning(String name, long length, long width, int count) {
        return new CutPart(name, Length.mm(length), Length.mm(width), count, true);
    }

    static CutJob job(Saw saw, List<Stock> stock, CutPart... parts) {
        return new CutJob(saw, CutJob.Keep.USUAL, stock, List.of(parts));
    }

    static CutPlan plan(CutJob job) {
        return SawPlans.plan(job, new Effort(2000, 7), () -> false);
    }

    /** A made-up kitchen mix of parts, some free to turn. */
    static CutJob kitchen(int parts, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<CutPart> list = IntStream.range(0, parts)
                .mapToObj(i -> new CutPart(
                        "p" + i,
                        Length.mm(random.nextInt(150, 900)),
                        Length.mm(random.nextInt(60, 580)),
                        1,
                        random.nextBoolean()))
                .toList();
        Saw saw = new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY);
        return new CutJob(saw, CutJob.Keep.USUAL, List.of(sheet(2440, 1220, 70), sheet(1525, 1525, 52)), list);
    }
}
