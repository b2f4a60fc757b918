package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.measure.Length;

/** Every act can be taken back and done again, to the letter. */
class UndoTest {
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

    /** One act of every kind, each building on the ones before. */
    private List<Act> everyAct() {
        String text = TestShop.starter("wall-shelf");
        String part = "left side";
        return List.of(
                new Act.AddClient(new Client("", "O. Finchweir", "", "")),
                new Act.ChangeClient(new Client("o-finchweir", "Finchweir", "by the mill", "")),
                new Act.AddJob("Shelf", "o-finchweir", Optional.empty(), text),
                new Act.EditText("shelf", 1, text + "# later\n", "a remark"),
                new Act.PutOnRack(OnHand.of(TestShop.board("C1", 180, 2400))),
                new Act.ChangeOnRack(new OnHand(TestShop.board("C1", 180, 2400), Optional.of(5L), "there")),
                new Act.PutOnRack(OnHand.of(TestShop.board("C2", 200, 2400))),
                new Act.TakeOffRack("C2", "sold"),
                new Act.PutSupply(new Supply(
                        "oil", Supply.Kind.FINISH, "oil", new BigDecimal("1"), "litres", Optional.empty(), "")),
                new Act.TakeSupply("oil"),
                new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.4 mm")),
                new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "")),
                new Act.Log(
                        "shelf",
                        new BenchEntry.Sawn(
                                Optional.of("C1"),
                                List.of(new BenchEntry.SawnPart(part, Length.mm(700), Length.mm(160), 1)),
                                List.of(OnHand.of(TestShop.board("C1 rest", 180, 1600))))),
                new Act.Log("shelf", new BenchEntry.Cut(part, Map.of("width", Length.mm(140)))),
                new Act.Log("shelf", new BenchEntry.Done("glue up")),
                new Act.Log("shelf", new BenchEntry.Undone("glue up")),
                new Act.Log("shelf", new BenchEntry.Minutes(part, 20)),
                new Act.Log("shelf", new BenchEntry.Note(part, "nice grain", Optional.empty())),
                new Act.Log("shelf", new BenchEntry.Spoilt(part, "split")),
                new Act.ChangeJob(
                        new Job("shelf", "Long shelf", "", Optional.empty(), Optional.of(1L), Job.State.FINISHED, 0)));
    }

    @Test
    void everyActIsTakenBackAndDoneAgainToTheLetter() {
        List<Map<String, Object>> states = new ArrayList<>(List.of(shop.state()));
        List<String> acts = new ArrayList<>();
        for (Act act : everyAct()) {
            acts.add(shop.does(act));
            states.add(shop.state());
        }
        for (int i = acts.size() - 1; i >= 0; i--) {
            shop.does(new Act.Undo(acts.get(i)));
            assertEquals(states.get(i), shop.state(), "after taking back act " + i);
        }
        for (int i = 0; i < acts.size(); i++) {
            shop.does(new Act.Redo(acts.get(i)));
            assertEquals(states.get(i + 1), shop.state(), "after doing act " + i + " again");
        }
        for (int i = acts.size() - 1; i >= 0; i--) {
            shop.does(new Act.Undo(acts.get(i)));
        }
        assertEquals(states.get(0), shop.state());
    }

    @Test
    void thePlanIsTheSameAgainAfterTakingBack() {
        String job = shop.addJob("wall-shelf");
        JobPlan.Planned before = shop.planned(job);
        String text = TestShop.starter("wall-shelf").replace("9 deep", "10 deep");
        String edit = shop.does(new Act.EditText(job, 1, text, "deeper"));
        shop.does(new Act.Undo(edit));
        JobPlan.Planned after = shop.planned(job);
        assertEquals(before.revision(), after.revision());
        assertEquals(before.plan().blanks(), after.plan().blanks());
        assertEquals(before.plan().cuts(), after.plan().cuts());
        assertEquals(before.plan().findings(), after.plan().findings());
    }

    @Test
    void whatWasChangedAgainSinceIsNotTakenBack() {
        String first = shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.4 mm")));
        String second = shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.6 mm")));
        Answer.Refused no = shop.refuses(new Act.Undo(first));
        assertTrue(no.sentence().contains("changed again"), no::toString);
        shop.does(new Act.Undo(second));
        shop.does(new Act.Undo(first));
        shop.refuses(new Act.Undo(first));
    }

    @Test
    void anEarlierActIsTakenBackUnderLaterOnesThatDoNotTouchIt() {
        shop.does(new Act.PutOnRack(OnHand.of(TestShop.board("C1", 180, 2400))));
        String kerf = shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "2.4 mm")));
        shop.does(new Act.PutOnRack(OnHand.of(TestShop.board("C2", 180, 2400))));
        shop.does(new Act.Undo(kerf));
        assertEquals(2, shop.store().onHand().size());
        assertTrue(shop.store().settings().own().isEmpty());
    }

    @Test
    void aJobWithAHistoryDoesNotVanishUnderIt() {
        String job = shop.addJob("wall-shelf");
        String added = "a1";
        String minutes = shop.log(job, new BenchEntry.Minutes("sanding", 5));
        shop.refuses(new Act.Undo(added));
        shop.does(new Act.Undo(minutes));
        shop.does(new Act.Undo(added));
        assertTrue(shop.store().jobs().isEmpty());
        assertNotEquals(0, shop.store().version());
    }

    @Test
    void theBenchLogKeepsWhatWasTakenBack() {
        String job = shop.addJob("wall-shelf");
        String minutes = shop.log(job, new BenchEntry.Minutes("sanding", 5));
        shop.does(new Act.Undo(minutes));
        assertEquals(1, shop.store().bench(job).size());
        assertTrue(!shop.store().bench(job).get(0).inForce());
    }
}
