package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a maker sees who misses a word. */
class MistypedTest {
    @TempDir
    Path shop;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int scantling(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private String shelf() {
        Path file = shop.resolve("wall-shelf.yaml");
        assertEquals(Exit.WELL, scantling("new", file.toString()));
        return file.toString();
    }

    private void assertTold(String words) {
        assertTrue(err.toString().contains(words), err::toString);
        assertFalse(err.toString().contains("Exception"), err::toString);
    }

    @Test
    void aMistypedCommandIsAnsweredWithTheNearest() {
        assertEquals(Exit.WRONG, scantling("paln", "shelf.yaml"));
        assertTold("There is no command \"paln\". Maybe \"plan\"?");
    }

    @Test
    void aNameWithSpacesWantsQuotes() {
        assertEquals(Exit.WRONG, scantling("plan", "oak", "shelf.yaml"));
        assertTold("between quotes");
        assertTold("scantling plan --help");
    }

    @Test
    void aStarterIsKnownByItsNameInWords() throws IOException {
        assertEquals(Exit.WELL, scantling("new", shop.resolve("Bedside chest").toString()));
        assertTrue(Files.readString(shop.resolve("Bedside chest.yaml")).contains("drawers"));
        assertTrue(out.toString().contains("\"" + shop.resolve("Bedside chest.yaml") + "\""), out::toString);
    }

    @Test
    void whatIsGivenIsListedWithItsLines() {
        assertEquals(Exit.WELL, scantling("edit", shelf()));
        assertTrue(out.toString().contains("size / width: "), out::toString);
        assertTrue(out.toString().contains("(line "), out::toString);
    }

    @Test
    void aNameUnderWhichNothingIsGivenIsAnsweredWithTheNearest() {
        assertEquals(Exit.WRONG, scantling("edit", shelf(), "size / widht", "900 mm"));
        assertTold("Nothing is given as \"size / widht\"");
        assertTold("Maybe \"size / width\"?");
    }

    @Test
    void aNumberThatIsWorkedOutCannotBeEditedButExplained() {
        assertEquals(Exit.WRONG, scantling("edit", shelf(), "left side / length", "900 mm"));
        assertTold("left side / length is worked out, not given");
        assertTold("scantling explain");
    }

    @Test
    void aGivenValueIsExplainedByTheNameThatEditsIt() {
        assertEquals(Exit.WELL, scantling("explain", shelf(), "size / width"));
        assertTrue(out.toString().contains("given in line"), out::toString);
    }

    @Test
    void aFolderThatCannotBeAFolderIsRefusedBeforeThePieceIsRead() throws IOException {
        Path file = Files.writeString(shop.resolve("taken"), "-");
        assertEquals(
                Exit.WRONG,
                scantling("plan", "absent.yaml", "--out", file.resolve("out").toString()));
        assertTold("a file stands where a folder is needed");
    }
}
