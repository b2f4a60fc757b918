package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.shop.ShopStore;

/** Every text and command of the guide is run, page by page, as a reader would. */
class GuideTest {
    private static final Pattern BLOCK = Pattern.compile("(?s)```(yaml|console)\\n(.*?)```");
    private static final Pattern FILE = Pattern.compile("# file: (\\S+)\\n");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)\\)");
    private static final Pattern ANSWER = Pattern.compile("# answers (\\d)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private static final List<String> FOLDERS = List.of("shelf", "paper", "workshop", "another-workshop", "tables");

    @TempDir
    Path bench;

    private static Path guide() {
        return Path.of(System.getProperty("scantling.root", ".."), "docs", "guide");
    }

    /** What has been served before there is something to keep safe. */
    @BeforeEach
    void makeAShop() {
        ShopStore.open(bench.resolve("workshop")).close();
    }

    static List<Path> pages() throws IOException {
        try (Stream<Path> pages = Files.list(guide())) {
            return pages.filter(page -> page.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void whatAPageShowsHappens(Path page) throws IOException {
        Matcher block = BLOCK.matcher(Files.readString(page));
        while (block.find()) {
            if (block.group(1).equals("yaml")) {
                Matcher file = FILE.matcher(block.group(2));
                assertTrue(file.lookingAt(), () -> page + ": a text without a file name: " + block.group(2));
                Files.writeString(bench.resolve(file.group(1)), block.group(2));
            } else {
                console(page, block.group(2));
            }
        }
    }

    private void console(Path page, String text) {
        String answer = "";
        for (String line : text.split("\n")) {
            if (line.startsWith("$ ")) {
                answer = run(page, line.substring(2));
            } else {
                String said = answer;
                assertTrue(said.contains(line), () -> page + ": \"" + line + "\" is not in: " + said);
            }
        }
    }

    /** Runs a command with its files in the folder of this test. */
    private String run(Path page, String line) {
        Matcher answer = ANSWER.matcher(line);
        int expected = answer.find() ? Integer.parseInt(answer.group(1)) : Exit.WELL;
        List<String> args = new ArrayList<>();
        Matcher word = WORD.matcher(line.replaceFirst("\\s+# .*", ""));
        while (word.find()) {
            args.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        assertEquals("./scantling", args.remove(0), page.toString());
        args.replaceAll(arg -> arg.endsWith(".yaml") || FOLDERS.contains(arg)
                ? bench.resolve(arg).toString()
                : arg);
        StringWriter out = new StringWriter();
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(out, true), args.toArray(String[]::new));
        assertEquals(expected, code, () -> page + ": " + line + ": " + out);
        return out.toString();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkOfAPageLeadsSomewhere(Path page) throws IOException {
        Matcher link = LINK.matcher(Files.readString(page));
        List<String> dead = new ArrayList<>();
        while (link.find()) {
            if (!Files.exists(guide().resolve(link.group(1)).normalize())) {
                dead.add(link.group(1));
            }
        }
        assertFalse(dead.size() > 0, () -> page + " leads to what is not there: " + dead);
    }
}
