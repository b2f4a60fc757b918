package scantling.bench.trust;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import scantling.shop.Act;
import scantling.shop.BenchEntry;
import scantling.shop.Client;
import scantling.shop.Job;
import scantling.shop.Sent;
import scantling.shop.ShopFolder;
import scantling.shop.ShopStore;
import scantling.shop.ShopTrouble;

/** A sound shop written out, and copies of it with some of their text damaged. */
final class DamagedShops {
    private final Path exported;
    private final Hand hand;

    DamagedShops(Path place, Hand hand) {
        this.exported = place.resolve("exported");
        this.hand = hand;
        try (ShopStore store = ShopStore.open(place.resolve("shop"))) {
            take(store, 1, new Act.AddClient(new Client("", "Finchweir, \"O.\"", "line one\nline two", "é")));
            take(store, 2, new Act.AddJob("Shelf", "", Optional.empty(), Texts.starter("wall-shelf")));
            String job = store.jobs().stream().map(Job::id).findFirst().orElseThrow();
            take(store, 3, new Act.Log(job, new BenchEntry.Note("", "dry, flat", Optional.empty())));
            take(store, 4, new Act.Log(job, new BenchEntry.Minutes("left side", 12)));
            store.exportTo(exported);
        }
    }

    private static void take(ShopStore store, int number, Act act) {
        store.take(Sent.fromDesk("damaged-shop-" + number, act));
    }

    /** A copy that something happened to. */
    Path make(Path to) throws IOException {
        Folders.copy(exported, to);
        List<Path> files = Folders.files(to);
        for (int i = 0; i <= hand.below(2); i++) {
            Path file = hand.of(files);
            // Byte for byte: what is no text must be refused in words too.
            String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
            Files.write(file, hand.damaged(text, Texts.TOKENS).getBytes(StandardCharsets.ISO_8859_1));
        }
        return to;
    }

    /** Whether it was read in, and then is a whole shop; false when it was refused in words. */
    static boolean isReadIn(Path exported, Path into) {
        try {
            new ShopFolder(into, Clock.systemUTC()).importFrom(exported);
        } catch (ShopTrouble refused) {
            if (Files.exists(into.resolve(ShopStore.FILE))) {
                throw new IllegalStateException("refused, and something was put in place all the same", refused);
            }
            return false;
        }
        try (ShopStore store = ShopStore.open(into)) {
            store.jobs().forEach(job -> store.jobBook().planOf(job.id()));
        }
        return true;
    }
}
