package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import org.jdbi.v3.core.CloseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.shop.Act;
import scantling.shop.Closed;
import scantling.shop.ShopStore;
import scantling.shop.ShopTrouble;
import scantling.shop.SmallDisk;

/** What goes wrong with the folder under the pages: the maker is told in words, and nothing that was taken is lost. */
class FolderTroubleTest {
    @TempDir
    Path folder;

    private static HttpResponse<String> newShelf(OpenShop shop, String title) {
        OpenShop.Browser desk = shop.desk();
        return desk.post(
                "/jobs",
                Map.of("stamp", desk.stamp("/guide"), "from", "wall-shelf", "title", title, "due", ""),
                "Accept",
                "text/html");
    }

    private static HttpResponse<String> version(OpenShop shop, String job, int number) {
        return shop.desk()
                .get("/jobs/%s/versions?left=%d&right=%d".formatted(job, number, number), "Accept", "text/html");
    }

    /** What whoever opens the folder is told; the command that opens the pages says just that. */
    private static String served(Path folder) {
        return String.valueOf(
                assertThrows(ShopTrouble.class, () -> ShopStore.open(folder).close())
                        .getMessage());
    }

    @Test
    void aSecondInstanceOnTheSameFolderIsSentToTheFirstWhichGoesOn() {
        try (OpenShop shop = new OpenShop(folder, false)) {
            String job = shop.job("wall-shelf");
            String said = served(folder);
            assertTrue(said.contains("already open") && said.contains("close it first"), said);
            ShopTrouble trouble =
                    assertThrows(ShopTrouble.class, () -> ShopStore.open(folder).close());
            assertEquals(ShopTrouble.Kind.IN_USE, trouble.kind());
            assertEquals(200, shop.desk().get("/jobs/" + job).statusCode());
            assertEquals(303, newShelf(shop, "Another").statusCode());
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldBeforeAnythingIsShown() throws Exception {
        try (SmallDisk disk = SmallDisk.on(folder)) {
            try (OpenShop shop = new OpenShop(folder, false)) {
                shop.job("wall-shelf");
            }
            disk.makeReadOnly();
            String said = served(folder);
            assertTrue(said.contains("cannot be written to") && said.contains("name another folder"), said);
        }
    }

    @Test
    void aFolderThatTurnsReadOnlyIsToldOnThePageAndNothingIsLost() {
        String job = "wall-shelf";
        String act = "{\"queue\":\"0123456789abcdef\",\"acts\":[{\"id\":\"act-number-1\",\"n\":1,"
                + "\"kind\":\"note\",\"subject\":\"glue up\",\"text\":\"a knot\"}]}";
        try (OpenShop shop = new OpenShop(folder, false)) {
            assertEquals(job, shop.job("wall-shelf"));
            Closed.forWriting(shop.store);
            HttpResponse<String> answer = newShelf(shop, "Another");
            assertEquals(500, answer.statusCode());
            assertTrue(answer.body().contains("cannot be written to"), answer.body());
            assertTrue(answer.body().contains("What was there before is still there"), answer.body());
            assertEquals(200, shop.desk().get("/jobs/" + job).statusCode(), "it can still be read");
            // a phone keeps what was not answered with yes, and sends it again
            assertEquals(500, acts(shop.desk(), job, act).statusCode());
        } catch (CloseException refusedToTheEnd) {
            assertTrue(Files.exists(folder.resolve(ShopStore.FILE)), "it is kept");
        }
        try (OpenShop shop = new OpenShop(folder, false)) {
            assertEquals(1, shop.store.jobs().size());
            assertEquals(200, acts(shop.desk(), job, act).statusCode());
            assertEquals(200, acts(shop.desk(), job, act).statusCode());
            assertEquals(1, shop.store.bench(job).size(), "once, though it was sent three times");
        }
    }

    private static HttpResponse<String> acts(OpenShop.Browser phone, String job, String acts) {
        return phone.post("/jobs/" + job + "/bench/acts", acts, "X-Stamp", phone.stamp("/new"));
    }

    @Test
    void aFileDamagedWhileThePagesAreOpenIsToldKeptAndTheLastBackUpNamed() throws IOException {
        Path file = folder.resolve(ShopStore.FILE);
        try (OpenShop shop = new OpenShop(folder, false)) {
            String job = shop.job("wall-shelf");
            String text = shop.store.text(job).orElseThrow().text();
            for (int i = 1; i < 50; i++) {
                shop.act(new Act.EditText(job, i, text + "# %d\n".formatted(i) + "# sawdust\n".repeat(9_000), ""));
            }
            Path backUp = shop.store.backUp();
            spoil(file);
            HttpResponse<String> answer = version(shop, job, 1);
            for (int i = 2; i < 50 && answer.statusCode() < 500; i++) {
                answer = version(shop, job, i);
            }
            assertEquals(500, answer.statusCode(), answer.body());
            assertTrue(answer.body().contains("is damaged"), answer.body());
            assertTrue(answer.body().contains("left exactly as it is"), answer.body());
            assertTrue(answer.body().contains(backUp.getFileName().toString()), answer.body());
            assertTrue(answer.body().contains("scantling shop restore"), answer.body());
        } catch (ShopTrouble closingWhatIsDamaged) {
            assertEquals(ShopTrouble.Kind.DAMAGED, closingWhatIsDamaged.kind());
        }
        assertTrue(Files.exists(file), "it is kept");
        String said = served(folder);
        assertTrue(said.contains("damaged") && said.contains("scantling shop restore"), said);
    }

    /** Noise over everything but the first page, in the file and in the log ahead of it. */
    private static void spoil(Path file) throws IOException {
        for (Path each : new Path[] {file, file.resolveSibling(file.getFileName() + "-wal")}) {
            if (Files.exists(each) && Files.size(each) > 4096) {
                try (RandomAccessFile open = new RandomAccessFile(each.toFile(), "rw")) {
                    byte[] noise = new byte[(int) open.length() - 4096];
                    new Random(7).nextBytes(noise);
                    open.seek(4096);
                    open.write(noise);
                }
            }
        }
    }
}
