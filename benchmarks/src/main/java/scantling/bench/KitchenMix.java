package scantling.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.FirstCut;
import scantling.cutting.Saw;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.Length;

/**
 * Made-up jobs of sheet parts as kitchens have them, from two kinds of sheet, with kerf and trim. {@link #cabinets} takes apart
 * one cabinet after the other, so that sizes come again and again, as in a kitchen; {@link #scattered} draws every part by
 * itself, so that of few parts hardly two are alike. Sizes are invented; that a cabinet has two sides, a floor, rails, shelves
 * and fronts is common practice.
 */
public enum KitchenMix {
    /** One cabinet after the other. */
    CABINETS {
        @Override
        List<CutPart> parts(int count, long seed) {
            return cabinets(count, new SplittableRandom(seed));
        }
    },
    /** Every part by itself. */
    SCATTERED {
        @Override
        List<CutPart> parts(int count, long seed) {
            return scattered(count, new SplittableRandom(seed));
        }
    };

    private static final int BOARD = 18;
    private static final int GAP = 3;
    private static final int BASE_HIGH = 720;
    private static final int BASE_DEEP = 560;
    private static final int WALL_DEEP = 320;
    private static final int TALL_HIGH = 2070;
    private static final int RAIL = 100;
    private static final int[] WIDTHS = {300, 400, 450, 500, 600, 600, 800, 900};
    private static final int[] DRAWERS = {140, 283, 283};

    abstract List<CutPart> parts(int count, long seed);

    /** A job of so many parts; the same seed gives the same job. */
    CutJob job(int count, long seed) {
        List<Stock> stock = List.of(
                new Stock.SheetStock("four by eight", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70),
                new Stock.SheetStock("five by five", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52));
        Saw saw = new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY);
        return new CutJob(saw, CutJob.Keep.USUAL, stock, parts(count, seed), Wishes.MONEY_ONLY);
    }

    /** A size of part, as it lies in the sheet. */
    private record Size(int length, int width, boolean turn) {}

    private static List<CutPart> cabinets(int count, SplittableRandom random) {
        List<Size> sizes = new ArrayList<>();
        while (sizes.size() < count) {
            int width = WIDTHS[random.nextInt(WIDTHS.length)];
            switch (random.nextInt(8)) {
                case 0, 1, 2 -> base(sizes, width, false);
                case 3, 4 -> base(sizes, width, true);
                case 5, 6 -> wall(sizes, width);
                default -> tall(sizes, Math.min(width, 600));
            }
        }
        Map<Size, Integer> many = new LinkedHashMap<>();
        sizes.subList(0, count).forEach(size -> many.merge(size, 1, Integer::sum));
        List<CutPart> parts = new ArrayList<>();
        many.forEach((size, n) -> parts.add(new CutPart(
                "%d by %d".formatted(size.length(), size.width()),
                Length.mm(size.length()),
                Length.mm(size.width()),
                n,
                size.turn())));
        return parts;
    }

    private static void base(List<Size> sizes, int width, boolean drawers) {
        int clear = width - 2 * BOARD;
        add(sizes, 2, BASE_HIGH, BASE_DEEP, false);
        add(sizes, 1, clear, BASE_DEEP, true);
        add(sizes, 2, clear, RAIL, true);
        if (drawers) {
            for (int high : DRAWERS) {
                add(sizes, 1, high, width - GAP, false);
            }
        } else {
            add(sizes, 1, clear - 2, BASE_DEEP - 50, true);
            doors(sizes, width, BASE_HIGH - GAP);
        }
    }

    private static void wall(List<Size> sizes, int width) {
        int clear = width - 2 * BOARD;
        add(sizes, 2, BASE_HIGH, WALL_DEEP, false);
        add(sizes, 2, clear, WALL_DEEP, true);
        add(sizes, 2, clear - 2, WALL_DEEP - 20, true);
        doors(sizes, width, BASE_HIGH - GAP);
    }

    private static void tall(List<Size> sizes, int width) {
        int clear = width - 2 * BOARD;
        add(sizes, 2, TALL_HIGH, BASE_DEEP, false);
        add(sizes, 3, clear, BASE_DEEP, true);
        add(sizes, 3, clear - 2, BASE_DEEP - 50, true);
        doors(sizes, width, TALL_HIGH - BASE_HIGH - GAP);
        doors(sizes, width, BASE_HIGH - GAP);
    }

    private static void doors(List<Size> sizes, int width, int high) {
        int leaves = width > 600 ? 2 : 1;
        add(sizes, leaves, high, width / leaves - GAP, false);
    }

    private static void add(List<Size> sizes, int count, int length, int width, boolean turn) {
        for (int i = 0; i < count; i++) {
            sizes.add(new Size(length, width, turn));
        }
    }

    private static List<CutPart> scattered(int count, SplittableRandom random) {
        int[] lengths = {300, 330, 358, 450, 558, 564, 600, 715, 720, 764, 895};
        int[] widths = {80, 100, 120, 140, 280, 300, 320, 490, 510, 560, 578};
        List<CutPart> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(new CutPart(
                    "part " + i,
                    Length.mm(lengths[random.nextInt(lengths.length)]),
                    Length.mm(widths[random.nextInt(widths.length)]),
                    1,
                    random.nextInt(3) == 0));
        }
        return parts;
    }
}
