package scantling.cli;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import scantling.packet.PacketPdf;

/** Begins beside the main work what a command will surely need later. It changes no result, only how long it takes. */
final class Ahead {
    private Ahead() {}

    /** Looks at a command line before it is read. */
    static void of(String... args) {
        List<String> line = List.of(args);
        boolean onPaper = line.contains("packet") || line.stream().anyMatch(word -> word.startsWith("--out"));
        CompletableFuture.runAsync(() -> {
            Workbench.getReady();
            if (onPaper) {
                PacketPdf.getReady();
            }
        });
    }
}
