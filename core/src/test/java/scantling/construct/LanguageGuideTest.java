package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import scantling.piece.LanguageGuide;

class LanguageGuideTest {
    /** {@code -Dgolden=true} writes the page anew; read the difference before committing it. */
    @Test
    void thePageOfElementsIsTheLanguageAsItIs() throws IOException {
        Path page = Path.of(System.getProperty("scantling.root", ".."), "docs", "elements.md");
        String now = LanguageGuide.page(Construction.language());
        if (Boolean.getBoolean("golden")) {
            Files.writeString(page, now);
        }
        assertEquals(Files.readString(page), now);
    }
}
