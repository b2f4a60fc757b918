package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.Saw;
import scantling.cutting.SawPlans;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.Length;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/**
 * The sheet goods of the starters, cut from sheets of four by eight and five by five feet at made-up prices, kerf 3.2, trim
 * 10: cost beside its bound, and the fence settings with and without the wish for few. Option: {@code --steps} (30,000 with
 * the wish, half of them without: as many as the search for money has in both).
 */
public final class ShopSuite {
    private static final List<Stock> STOCK = List.of(
            new Stock.SheetStock("four by eight", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70),
            new Stock.SheetStock("five by five", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52));
    private static final Saw SAW = new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY);

    private ShopSuite() {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        long steps = Options.of(args, List.of("steps")).whole("steps", 30_000);
        System.out.println("| job | parts | cost | bound | settings | without the wish | cuts | without |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        long[] sums = new long[6];
        for (Map.Entry<String, CutJob> job : jobs().entrySet()) {
            CutPlan easy = SawPlans.plan(job.getValue(), new Effort(steps, 1), () -> false);
            CutPlan cheap =
                    SawPlans.plan(job.getValue().withWishes(Wishes.MONEY_ONLY), new Effort(steps / 2, 1), () -> false);
            long[] row = {easy.cost(), easy.lowerBound(), easy.settings(), cheap.settings(), easy.cuts(), cheap.cuts()};
            for (int i = 0; i < row.length; i++) {
                sums[i] += row[i];
            }
            int parts = job.getValue().parts().stream().mapToInt(CutPart::count).sum();
            print(job.getKey(), String.valueOf(parts), row);
        }
        print("all", "", sums);
    }

    private static void print(String name, String parts, long[] row) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %d | %d | %d | %d | %d | %d |%n",
                name,
                parts,
                row[0],
                row[1],
                row[2],
                row[3],
                row[4],
                row[5]);
    }

    private static Map<String, CutJob> jobs() throws IOException {
        Map<String, CutJob> jobs = new LinkedHashMap<>();
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(0, 1));
        for (String starter : List.of("bookcase", "bedside-chest", "sideboard", "kitchen")) {
            Planner.plan(piece(starter), BenchLog.EMPTY, shop).plan().cuts().stream()
                    .filter(group -> group.job().stock().get(0) instanceof Stock.SheetStock)
                    .forEach(group -> jobs.put(
                            starter + ": " + group.title(),
                            new CutJob(
                                    SAW, group.job().keep(), STOCK, group.job().parts())));
        }
        return jobs;
    }

    private static Piece piece(String starter) throws IOException {
        try (InputStream in = Starters.open(starter)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return PieceReader.read(text, Construction.language(), StandardWoods.standard())
                    .piece()
                    .orElseThrow();
        }
    }
}
