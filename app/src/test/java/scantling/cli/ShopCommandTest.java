package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import scantling.shop.ShopStore;

/** Looking after the shop's folder from the command line. */
class ShopCommandTest extends AtTheConsole {
    @BeforeEach
    void makeAShop() {
        ShopStore.open(shop.resolve("shop")).close();
    }

    @Test
    void aShopIsCopiedListedAndPutBack() {
        assertEquals(
                Exit.WELL, scantling("shop", "back-up", "--data", at("shop")).code());
        Answer list = scantling("shop", "restore", "--list", "--data", at("shop"));
        assertTrue(list.out().contains("asked for"), list::toString);
        Answer restored = scantling("shop", "restore", "--data", at("shop"));
        assertEquals(Exit.WELL, restored.code(), restored::toString);
        assertTrue(restored.out().contains("set aside"), restored::toString);
    }

    @Test
    void aShopIsWrittenOutAndReadInElsewhere() {
        assertEquals(
                Exit.WELL,
                scantling("shop", "export", "--data", at("shop"), at("out")).code());
        assertTrue(Files.exists(shop.resolve("out").resolve("read-me.txt")));
        assertEquals(
                Exit.WELL,
                scantling("shop", "import", "--data", at("other"), at("out")).code());
        Answer again = scantling("shop", "import", "--data", at("other"), at("out"));
        assertEquals(Exit.WRONG, again.code());
        assertTrue(again.err().contains("already"), again::toString);
    }

    @Test
    void aShopThatIsOpenIsWrittenOutCopiedAndPricedBy() {
        scantling("new", at("piece.yaml"), "--from", "wall-shelf");
        try (ShopStore open = ShopStore.open(shop.resolve("shop"))) {
            Answer export = scantling("shop", "export", "--data", at("shop"), at("out"));
            assertEquals(Exit.WELL, export.code(), export::toString);
            Answer copy = scantling("shop", "back-up", "--data", at("shop"));
            assertEquals(Exit.WELL, copy.code(), copy::toString);
            Answer price = scantling("price", at("piece.yaml"), "--settings", at("shop"));
            assertEquals(Exit.WELL, price.code(), price::toString);
            assertEquals(0, open.version());
        }
        assertTrue(Files.exists(shop.resolve("out").resolve("read-me.txt")));
    }

    @Test
    void troubleWithTheFolderIsOneSentence() {
        Answer answer = scantling("shop", "restore", "--data", at("nowhere"));
        assertEquals(Exit.WRONG, answer.code());
        assertTrue(answer.err().contains("no back-up") && !answer.err().contains("\tat "), answer::toString);
    }
}
