package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;
import scantling.shop.Client;
import scantling.shop.Job;
import scantling.shop.OnHand;
import scantling.shop.Recorded;
import scantling.shop.ShopFolder;
import scantling.shop.Supply;
import scantling.stock.Board;
import scantling.stock.Defect;
import scantling.stock.Grade;

/** Clients, what was agreed, hardware and finish on hand, prices and places of what lies in the rack: each act by its page, and back. */
class StockPagesTest extends AtTheDesk {
    private String page(String path) {
        return desk.get(path, "Accept", "text/html").body();
    }

    private void takeBackTheLast(String page) {
        Recorded last = shop.store.lastActs(1).get(0);
        HttpResponse<String> answer = post("/undo", "of", last.id(), "back", page);
        assertEquals(303, answer.statusCode());
        assertEquals(Optional.of(page), answer.headers().firstValue("Location"));
    }

    private HttpResponse<String> slides(String amount) {
        return post(
                "/onhand",
                "kind",
                "hardware",
                "name",
                "concealed undermount slide 350 mm",
                "amount",
                amount,
                "unit",
                "pairs",
                "price",
                "31,50",
                "place",
                "drawer 4");
    }

    @Test
    void aClientIsAddedChangedAndTakenBack() {
        assertEquals(
                303,
                post("/clients", "name", "A. Weaver", "contact", "by letter", "note", "")
                        .statusCode());
        post("/clients/a-weaver", "name", "Ann Weaver", "contact", "by letter", "note", "no smell");
        assertEquals(List.of(new Client("a-weaver", "Ann Weaver", "by letter", "no smell")), shop.store.clients());
        assertTrue(page("/clients").contains("Ann Weaver"));
        takeBackTheLast("/clients");
        assertEquals(List.of(new Client("a-weaver", "A. Weaver", "by letter", "")), shop.store.clients());
    }

    @Test
    void whatWasAgreedStandsOnTheSheetAndOnTheFirstPage() {
        String job = shop.job("wall-shelf");
        post("/clients", "name", "A. Weaver", "contact", "", "note", "");
        post(
                "/jobs/" + job + "/agreed",
                "title",
                "Shelf for the hall",
                "client",
                "a-weaver",
                "due",
                "2031-03-07",
                "price",
                "480",
                "state",
                "in hand");
        Job now = shop.store.job(job).orElseThrow();
        assertEquals("a-weaver", now.client());
        assertEquals(Optional.of(LocalDate.of(2031, 3, 7)), now.due());
        assertEquals(Optional.of(48_000L), now.price());
        assertTrue(page("/jobs/" + job).contains("A. Weaver"));
        assertTrue(page("/").contains("Shelf for the hall") && page("/").contains("for A. Weaver"));
        assertTrue(page("/clients/a-weaver").contains("Shelf for the hall"));
    }

    @Test
    void aNewJobIsForTheClientThatWasChosen() {
        post("/clients", "name", "A. Weaver", "contact", "", "note", "");
        assertTrue(page("/new?client=a-weaver").contains("A. Weaver"));
        post("/jobs", "from", "wall-shelf", "title", "Shelf", "client", "a-weaver", "due", "");
        assertEquals("a-weaver", shop.store.job("shelf").orElseThrow().client());
    }

    @Test
    void aWrongPriceOrAmountIsRefusedWithWhatToWrite() {
        assertTrue(slides("some").body().contains("is no amount"));
        assertTrue(post("/onhand", "kind", "finish", "name", "oil", "amount", "1", "unit", "litres", "price", "dear")
                .body()
                .contains("is no price"));
        assertEquals(List.of(), shop.store.supplies());
    }

    @Test
    void whatIsOnHandIsNotBoughtAgain() {
        shop.job("bedside-chest");
        assertTrue(page("/").contains("3 pairs"), "three drawers need three pairs of slides");
        slides("2");
        assertTrue(page("/").contains("1 pair<"), "two of them are on hand");
        slides("1");
        assertFalse(page("/").contains("concealed undermount slide"), "all are");
    }

    @Test
    void aSupplyIsChangedUsedUpAndEachActTakenBack() {
        slides("2");
        Supply first = shop.store.supplies().get(0);
        assertEquals(new BigDecimal("2"), first.amount());
        assertEquals(Optional.of(3150L), first.price());
        post(
                "/onhand",
                "kind",
                "hardware",
                "id",
                first.id(),
                "name",
                first.name(),
                "amount",
                "1.5",
                "unit",
                "pairs",
                "price",
                "",
                "place",
                "shelf");
        assertEquals(new BigDecimal("1.5"), shop.store.supplies().get(0).amount());
        post("/onhand/off", "id", first.id());
        assertEquals(List.of(), shop.store.supplies());
        takeBackTheLast("/onhand");
        assertEquals("shelf", shop.store.supplies().get(0).place());
        assertTrue(page("/onhand").contains("Do it again"), "and what was taken back can be done again");
    }

    @Test
    void placeAndPriceOfAPieceInTheRackAreWrittenOnItsLine() {
        post(
                "/rack",
                "kind",
                "board",
                "id",
                "W1",
                "material",
                "white oak",
                "class",
                "4/4",
                "length",
                "2440",
                "width",
                "230",
                "place",
                "left",
                "price",
                "42.50");
        post("/rack/change", "id", "W1", "place", "right, low", "price", "40");
        OnHand now = shop.store.onHand().get(0);
        assertEquals("right, low", now.place());
        assertEquals(Optional.of(4000L), now.price());
        takeBackTheLast("/rack");
        assertEquals(Optional.of(4250L), shop.store.onHand().get(0).price());
    }

    @Test
    void aBoardIsMarkedAndKeepsItsMarksWhenItIsTakenBack() {
        String[] oak = {
            "kind", "board", "id", "W1", "material", "white oak", "class", "4/4", "length", "2440", "width", "230"
        };
        post("/rack", oak);
        assertEquals(
                303,
                post(
                                "/rack/mark",
                                "id",
                                "W1",
                                "grade",
                                "FAS",
                                "defects",
                                "300 to 420; 900 to 1100, 40 off the far edge")
                        .statusCode());
        Board board = (Board) shop.store.onHand().get(0).stock();
        assertEquals(Grade.find("FAS"), board.grade());
        assertEquals(
                List.of(
                        Defect.across(Length.mm(300), Length.mm(420)),
                        new Defect(Length.mm(900), Length.mm(1100), Defect.Edge.FAR, Length.mm(40))),
                board.defects());
        assertTrue(page("/rack").contains("not 900.0 to 1100.0 mm, 40.0 mm off the far edge"));
        assertEquals(
                400,
                post("/rack/mark", "id", "W1", "grade", "", "defects", "a knot").statusCode());
        takeBackTheLast("/rack");
        assertEquals(List.of(), ((Board) shop.store.onHand().get(0).stock()).defects());
    }

    @Test
    void theSwitchTurnsRackAndSettingsToInchesAndSizesAreReadSo() {
        assertEquals(303, post("/units", "unit", "in", "back", "/rack").statusCode());
        post(
                "/rack",
                "kind",
                "board",
                "id",
                "W1",
                "material",
                "white oak",
                "class",
                "4/4",
                "length",
                "96",
                "width",
                "9 1/2");
        assertEquals(Length.inches(96), shop.store.onHand().get(0).stock().length());
        assertTrue(page("/rack").contains("9 1/2"));
        assertTrue(page("/settings").contains("value=\"0.492 in\""), "12.5 mm over finished, in inches");
        post(
                "/settings/line",
                "section",
                "allowances",
                "key",
                "length over finished",
                "value",
                "0.492 in",
                "was",
                "0.492 in");
        assertEquals("", shop.store.settings().text(), "what is only shown in inches is not written anew");
        post("/units", "unit", "mm", "back", "/rack");
        assertTrue(page("/rack").contains("2438.4"));
    }

    @Test
    void everythingComesBackByteForByteThroughAnExport() throws Exception {
        post("/clients", "name", "A. \"Weaver\", joiner", "contact", "line 1\nline 2", "note", "");
        slides("2");
        post(
                "/rack",
                "kind",
                "sheet",
                "id",
                "S 1",
                "material",
                "birch plywood",
                "thickness",
                "12",
                "measured",
                "11.8",
                "length",
                "2440",
                "width",
                "1220",
                "grain",
                "along",
                "price",
                "80",
                "place",
                "wall");
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        shop.store.exportTo(first);
        new ShopFolder(folder.resolve("again"), Clock.systemUTC()).importFrom(first);
        try (OpenShop again = new OpenShop(folder.resolve("again"), false)) {
            again.store.exportTo(second);
        }
        for (String file : List.of("clients.csv", "rack.csv", "supplies.csv")) {
            assertEquals(Files.readString(first.resolve(file)), Files.readString(second.resolve(file)));
        }
    }
}
