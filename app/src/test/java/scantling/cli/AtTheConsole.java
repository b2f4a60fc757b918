package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/** Commands as a maker types them, in a folder of their own. */
abstract class AtTheConsole {
    @TempDir
    Path shop;

    /** What a command answers. @param code its exit code @param out what it says @param err what it complains of */
    record Answer(int code, String out, String err) {}

    static Answer scantling(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Answer(code, out.toString(), err.toString());
    }

    final String at(String name) {
        return shop.resolve(name).toString();
    }

    final Path file(String name, String text) throws IOException {
        return Files.writeString(shop.resolve(name), text);
    }

    static void assertRefused(Answer answer, String... words) {
        assertEquals(Exit.WRONG, answer.code(), answer::toString);
        assertFalse(answer.err().contains("\tat "), answer::err);
        for (String word : words) {
            assertTrue(answer.err().contains(word), () -> word + " is not in: " + answer.err());
        }
    }
}
