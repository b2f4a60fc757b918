package scantling.shop;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The process that is killed: takes acts one after another and says on its output which have been answered. */
final class CrashWriter {
    private CrashWriter() {}

    /** @param args folder, seed */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        CrashActs acts = new CrashActs(Long.parseLong(args[1]));
        try (ShopStore store = ShopStore.open(Path.of(args[0]), TestShop.CLOCK)) {
            long number = Math.max(1, store.version());
            out.println("open");
            // The last one may have been taken without its answer getting through: a phone would send it again.
            while (number < Long.MAX_VALUE) {
                Answer answer = store.take(acts.at(number));
                if (answer instanceof Answer.OutOfTurn wrong) {
                    out.println("out of turn " + wrong.expected());
                    return;
                }
                out.println("answered " + number);
                number++;
            }
        }
    }
}
