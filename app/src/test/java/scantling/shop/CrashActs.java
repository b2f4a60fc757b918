package scantling.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import scantling.measure.Length;

/** An endless row of acts of every kind, the same for the same seed, each counted so that none can slip in or out. */
final class CrashActs {
    static final String DEVICE = "crash";

    private static final String TEXT = """
        piece: Shelf
        size: 800 wide, 200 deep, 300 high
        materials:
          oak: {solid: white oak, thickness: 20}
        build:
          - case: {of: oak}
        """;

    private final long seed;

    CrashActs(long seed) {
        this.seed = seed;
    }

    /** The act of this number, counted from 1. */
    Sent at(long number) {
        return new Sent("crash-" + number, DEVICE, number, act(number, new Random(seed * 1_000_003 + number)));
    }

    private Act act(long number, Random random) {
        if (number == 1) {
            return new Act.AddJob("Shelf", "", Optional.empty(), TEXT);
        }
        String id = "B" + random.nextInt(30);
        return switch (random.nextInt(9)) {
            case 0 -> new Act.AddClient(new Client("", "Client " + number, "", "x".repeat(random.nextInt(9_000))));
            case 1, 2 -> new Act.PutOnRack(OnHand.of(TestShop.board(id, 100 + random.nextInt(200), 2400)));
            case 3 -> new Act.TakeOffRack(id, "");
            case 4 ->
                new Act.Set(
                        new Setting(Section.ALLOWANCE, "kerf", random.nextBoolean() ? "" : random.nextInt(9) + " mm"));
            case 5 ->
                new Act.PutSupply(new Supply(
                        "oil",
                        Supply.Kind.FINISH,
                        "oil",
                        new BigDecimal(random.nextInt(90)),
                        "litres",
                        Optional.empty(),
                        ""));
            case 6 -> new Act.Undo("crash-" + Math.max(1, number - 1 - random.nextInt(4)));
            case 7 -> new Act.Redo("crash-" + Math.max(1, number - 1 - random.nextInt(4)));
            default -> bench(random, id);
        };
    }

    private static Act bench(Random random, String id) {
        return new Act.Log(
                "shelf",
                switch (random.nextInt(4)) {
                    case 0 -> new BenchEntry.Minutes("left side", random.nextInt(90));
                    case 1 -> new BenchEntry.Cut("left side", Map.of("width", Length.mm(190 + random.nextInt(20))));
                    case 2 -> new BenchEntry.Note("", "n".repeat(random.nextInt(3_000)), Optional.empty());
                    default ->
                        new BenchEntry.Sawn(
                                Optional.of(id),
                                List.of(new BenchEntry.SawnPart("left side", Length.mm(320), Length.mm(90), 1)),
                                List.of(OnHand.of(TestShop.board(id + " rest", 90, 1900))));
                });
    }
}
