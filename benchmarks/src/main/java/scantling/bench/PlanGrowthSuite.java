package scantling.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.measure.LengthFormat;
import scantling.packet.JobSheetPage;
import scantling.packet.Packet;
import scantling.piece.BenchLog;
import scantling.piece.Language;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.Woods;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/**
 * How the time to a whole plan, and to its sheet as a page shows it, grows with the number of parts: the starters, warm, by
 * the clock. Options: {@code --runs} (40), {@code --draw} folder for the two curves.
 */
public final class PlanGrowthSuite {
    private static final double MILLION = 1e6;

    private final Language language = Construction.language();
    private final Woods woods = StandardWoods.standard();
    private final Shop shop = Shop.usual();

    private PlanGrowthSuite() {}

    /** One starter. @param parts how many @param plan milliseconds @param sheet milliseconds */
    private record Row(String starter, int parts, double plan, double sheet) {}

    /** The command line. */
    public static void main(String[] args) throws IOException {
        Options options = Options.of(args, List.of("runs", "draw"));
        int runs = options.whole("runs", 40);
        PlanGrowthSuite suite = new PlanGrowthSuite();
        List<Row> rows = new ArrayList<>();
        for (String starter : Starters.NAMES) {
            rows.add(suite.row(starter, runs));
        }
        rows.sort((a, b) -> Integer.compare(a.parts(), b.parts()));
        System.out.println("| piece | parts | plan, ms | sheet, ms |");
        System.out.println("| --- | --- | --- | --- |");
        rows.forEach(row -> System.out.printf(
                Locale.ROOT, "| %s | %d | %.1f | %.1f |%n", row.starter(), row.parts(), row.plan(), row.sheet()));
        String folder = options.text("draw", "");
        if (!folder.isEmpty()) {
            new Curve("Time to a whole plan", "parts", "milliseconds, warm", true)
                    .write(
                            Path.of(folder, "growth-plan.svg"),
                            rows.stream()
                                    .map(row -> new Curve.Point(row.parts(), row.plan(), row.starter()))
                                    .toList(),
                            0);
            new Curve("Time to a sheet", "parts", "milliseconds, warm", true)
                    .write(
                            Path.of(folder, "growth-sheet.svg"),
                            rows.stream()
                                    .map(row -> new Curve.Point(row.parts(), row.sheet(), row.starter()))
                                    .toList(),
                            0);
        }
    }

    private Row row(String starter, int runs) throws IOException {
        String text;
        try (InputStream in = Starters.open(starter)) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        double[] plans = new double[runs];
        double[] sheets = new double[runs];
        int parts = 0;
        for (int run = 0; run < 2 * runs; run++) {
            long start = System.nanoTime();
            Piece piece = PieceReader.read(text, language, woods).piece().orElseThrow();
            Plan plan = Planner.plan(piece, BenchLog.EMPTY, shop).plan();
            long planned = System.nanoTime();
            String body = JobSheetPage.body(
                    Packet.of(plan, LengthFormat.of(piece.unit())).content());
            long shown = System.nanoTime();
            if (body.isEmpty()) {
                throw new IllegalStateException("A sheet is empty.");
            }
            plans[run % runs] = (planned - start) / MILLION;
            sheets[run % runs] = (shown - planned) / MILLION;
            parts = plan.assembly().parts().size();
        }
        return new Row(starter, parts, median(plans), median(sheets));
    }

    private static double median(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
