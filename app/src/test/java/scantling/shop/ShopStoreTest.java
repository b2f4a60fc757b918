package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.measure.Length;
import scantling.stock.Offcut;
import scantling.stock.Sheet;
import scantling.stock.Stick;

/** What the shop remembers, and how it answers. */
class ShopStoreTest {
    @TempDir
    Path folder;

    private TestShop shop;

    @BeforeEach
    void open() {
        shop = new TestShop(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private void reopen() {
        shop.close();
        shop = new TestShop(folder);
    }

    @Test
    void everythingIsThereAfterClosingAndOpening() {
        shop.does(new Act.AddClient(new Client("", "O. Finchweir", "by the mill", "")));
        String job = shop.addJob("wall-shelf");
        shop.does(new Act.ChangeJob(new Job(
                job,
                "Shelf",
                "o-finchweir",
                Optional.of(LocalDate.of(2026, 4, 1)),
                Optional.of(48_000L),
                Job.State.IN_HAND,
                0)));
        shop.does(new Act.PutOnRack(new OnHand(TestShop.board("C1", 180, 2400), Optional.of(6_400L), "north wall")));
        shop.does(new Act.PutSupply(new Supply(
                "", Supply.Kind.FINISH, "hard oil", new BigDecimal("0.75"), "litres", Optional.of(2_400L), "shelf 2")));
        shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.4 mm")));
        shop.log(job, new BenchEntry.Note("top", "a knot", Optional.empty()));
        Map<String, Object> before = shop.state();
        reopen();
        assertEquals(before, shop.state());
        assertEquals("Shelf", shop.store().job(job).orElseThrow().title());
        assertEquals(1, shop.store().supplies().size());
    }

    @Test
    void everyKindOfStockComesBackAsItWas() {
        List<OnHand> pieces = List.of(
                new OnHand(TestShop.board("C1", 180, 2400), Optional.of(6_400L), "north wall"),
                OnHand.of(new Sheet(
                        "S1",
                        "birch plywood",
                        Length.mm(18),
                        Optional.of(Length.mm("17.6")),
                        Length.inches(96),
                        Length.inches(48),
                        Sheet.Grain.ALONG)),
                OnHand.of(new Stick("R1", "red oak", Length.inches(3, 8), Length.inches(3, 8), Length.mm(900))),
                OnHand.of(new Offcut(TestShop.board("C1 rest", 90, 700), "C0")));
        pieces.forEach(piece -> shop.does(new Act.PutOnRack(piece)));
        reopen();
        assertEquals(pieces, shop.store().onHand());
    }

    @Test
    void theSameActArrivingTwiceHappensOnce() {
        Act act = new Act.PutOnRack(OnHand.of(TestShop.board("C1", 180, 2400)));
        Answer first = shop.store().take(Sent.fromDesk("one", act));
        Answer again = shop.store().take(Sent.fromDesk("one", act));
        assertEquals(first, again);
        assertEquals(1, shop.store().onHand().size());
    }

    @Test
    void aPhonesActsAreTakenStrictlyInTurn() {
        String job = shop.addJob("wall-shelf");
        ShopStore store = shop.store();
        Sent first = new Sent("p1", "phone", 1, new Act.Log(job, new BenchEntry.Minutes("top", 10)));
        Sent second = new Sent("p2", "phone", 2, new Act.Log(job, new BenchEntry.Minutes("top", 20)));
        assertEquals(new Answer.OutOfTurn(1), store.take(second));
        assertInstanceOf(Answer.Taken.class, store.take(first));
        Answer taken = store.take(second);
        assertEquals(taken, store.take(second));
        assertEquals(
                List.of(new BenchEntry.Minutes("top", 10), new BenchEntry.Minutes("top", 20)),
                store.bench(job).stream().map(Logged::entry).toList());
    }

    @Test
    void aRefusedActOfAPhoneTakesItsTurnSoThatTheNextIsHeard() {
        String job = shop.addJob("wall-shelf");
        ShopStore store = shop.store();
        Sent wrong = new Sent("p1", "phone", 1, new Act.Log(job, new BenchEntry.Spoilt("no such part", "")));
        Answer.Refused no = assertInstanceOf(Answer.Refused.class, store.take(wrong));
        assertTrue(no.sentence().contains("no such part"));
        assertInstanceOf(Answer.Refused.class, store.take(wrong));
        assertInstanceOf(
                Answer.Taken.class,
                store.take(new Sent("p2", "phone", 2, new Act.Log(job, new BenchEntry.Minutes("top", 5)))));
    }

    @Test
    void aTextMadeFromAnOldRevisionIsRefusedWithBothTexts() {
        String job = shop.addJob("wall-shelf");
        String text = TestShop.starter("wall-shelf");
        shop.does(new Act.EditText(job, 1, text + "# theirs\n", "a remark"));
        Answer.Stale stale =
                assertInstanceOf(Answer.Stale.class, shop.says(new Act.EditText(job, 1, text + "# mine\n", "")));
        assertEquals(text + "# mine\n", stale.mine());
        assertEquals(text, stale.base().text());
        assertEquals(text + "# theirs\n", stale.theirs().text());
        assertEquals(2, shop.store().revisions(job).size());
    }

    @Test
    void aTextThatDoesNotReadIsRefusedWithItsProblems() {
        String job = shop.addJob("wall-shelf");
        Answer.Refused no = shop.refuses(new Act.EditText(job, 1, "piece: Bad\nsize: wide\n", ""));
        assertTrue(no.problems().stream().anyMatch(problem -> problem.span().line() == 2), no::toString);
        assertEquals(1, shop.store().revisions(job).size());
    }

    @Test
    void hostileTextsAreKeptAsTexts() {
        String hostile = "'); DROP TABLE job; -- <script>alert(1)</script> \u202e \u0000 \ud83e\udeb5";
        shop.does(new Act.AddClient(new Client("", hostile, hostile, hostile)));
        String job = shop.addJob("wall-shelf");
        shop.log(job, new BenchEntry.Note(hostile, hostile, Optional.empty()));
        reopen();
        assertEquals(hostile, shop.store().clients().get(0).note());
        assertEquals(
                new BenchEntry.Note(hostile, hostile, Optional.empty()),
                shop.store().bench(job).get(0).entry());
    }

    @Test
    void jobsOfOneTitleHaveNamesOfTheirOwn() {
        assertEquals(
                List.of("wall-shelf", "wall-shelf-2"), List.of(shop.addJob("wall-shelf"), shop.addJob("wall-shelf")));
    }

    @Test
    void aSettingIsRefusedWithWhatIsAllowed() {
        Answer.Refused no = shop.refuses(new Act.Set(new Setting(Section.ALLOWANCE, "kerv", "3 mm")));
        assertTrue(no.remedy().contains("kerf"), no::toString);
        shop.refuses(new Act.Set(new Setting(Section.HOURS, "monday", "25")));
        shop.refuses(new Act.Set(new Setting(Section.CLOSED, "Christmas", "")));
        shop.does(new Act.Set(new Setting(Section.CLOSED, "2026-12-25", "Christmas")));
        assertEquals(0, shop.store().settings().hours(LocalDate.of(2026, 12, 25)));
        assertEquals(8, shop.store().settings().hours(LocalDate.of(2026, 12, 24)));
    }

    @Test
    void aShopsOwnKerfReachesThePlan() {
        String job = shop.addJob("wall-shelf");
        Length usual = shop.plan(job).cuts().get(0).job().saw().kerf();
        shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.4 mm")));
        shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "sheet kerf", "2.4 mm")));
        assertNotEquals(usual, shop.plan(job).cuts().get(0).job().saw().kerf());
        assertEquals(Length.mm("2.4"), shop.plan(job).cuts().get(0).job().saw().kerf());
    }

    @Test
    void aPlanIsKeptWhileNothingItFollowsFromChanges() {
        String job = shop.addJob("wall-shelf");
        JobBook book = shop.store().jobBook();
        JobPlan.Planned first = (JobPlan.Planned) book.planOf(job).orElseThrow();
        shop.log(job, new BenchEntry.Minutes("sanding", 5));
        assertSame(first.plan(), ((JobPlan.Planned) book.planOf(job).orElseThrow()).plan());
        shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.4 mm")));
        assertNotSame(first.plan(), ((JobPlan.Planned) book.planOf(job).orElseThrow()).plan());
    }

    @Test
    void photosAreKeptOnceAndOnlyPicturesAre() {
        byte[] picture = new byte[400];
        picture[0] = (byte) 0xFF;
        picture[1] = (byte) 0xD8;
        picture[2] = (byte) 0xFF;
        Photo photo = Photo.of(picture).orElseThrow();
        assertEquals(shop.store().keep(photo), shop.store().keep(photo));
        assertEquals("jpg", shop.store().photo(photo.id()).orElseThrow().kind());
        assertTrue(Photo.of("<svg>".getBytes(StandardCharsets.UTF_8)).isEmpty());
        String job = shop.addJob("wall-shelf");
        shop.log(job, new BenchEntry.Note("top", "", Optional.of(photo.id())));
        shop.refuses(new Act.Log(job, new BenchEntry.Note("top", "", Optional.of("no such photo"))));
    }

    @Test
    void onlyAPairedDeviceIsKnownAndOnlyUntilItIsRevoked() {
        Devices devices = shop.store().devices();
        Device.Paired phone = devices.pair("phone");
        assertEquals(phone.device(), devices.find(phone.token()).orElseThrow());
        assertTrue(devices.find("").isEmpty());
        assertTrue(devices.find(phone.token() + "x").isEmpty());
        assertTrue(devices.revoke(phone.device().id()));
        assertTrue(devices.find(phone.token()).isEmpty());
        assertEquals(1, devices.all().size());
    }

    @Test
    void theTokenItselfIsNowhereInTheFile() throws Exception {
        String token = shop.store().devices().pair("phone").token();
        shop.close();
        for (String name : List.of(ShopStore.FILE, ShopStore.FILE + "-wal")) {
            Path file = folder.resolve(name);
            if (java.nio.file.Files.exists(file)) {
                String bytes = new String(java.nio.file.Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                assertTrue(!bytes.contains(token), name);
            }
        }
        shop = new TestShop(folder);
    }

    @Test
    void aFolderThatIsOpenIsNotOpenedAgain() {
        ShopTrouble trouble = assertThrows(ShopTrouble.class, () -> ShopStore.open(folder));
        assertEquals(ShopTrouble.Kind.IN_USE, trouble.kind());
        assertTrue(trouble.getMessage().contains("already open"), trouble::getMessage);
    }
}
