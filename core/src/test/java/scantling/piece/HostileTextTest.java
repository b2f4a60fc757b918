package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever stands in a text, reading ends with a piece or with problems that stand inside the text. */
final class HostileTextTest {
    private static final String[] SCRAPS = {
        "[",
        "]",
        "{",
        "}",
        ":",
        ",",
        "- ",
        "\n",
        "  ",
        "\t",
        "\"",
        "'",
        "#",
        "&a",
        "*a",
        "!x",
        "|",
        ">",
        "%",
        "@",
        "?",
        "0",
        "-1",
        "1/0",
        "99999999999",
        "leg",
        "width",
        "rest",
        "3 equal",
        "top",
        "\uD83E\uDE9A",
        "\u0000",
        "\uFEFF",
        "cherry",
        "materials",
        "---\n",
        "\r\n",
        "((",
        "*",
        "/",
        "1e9",
        "name",
        "\uD83E",
    };

    private static String mutated(String text, SplittableRandom random) {
        StringBuilder mutant = new StringBuilder(text);
        for (int i = random.nextInt(1, 6); i > 0; i--) {
            int at = random.nextInt(mutant.length() + 1);
            int end = Math.min(mutant.length(), at + random.nextInt(0, random.nextInt(10) == 0 ? 200 : 6));
            String scrap = random.nextInt(3) == 0 ? "" : SCRAPS[random.nextInt(SCRAPS.length)];
            mutant.replace(at, end, scrap);
        }
        return mutant.toString();
    }

    private static boolean check(String text) {
        ReadResult result = Bench.read(text);
        assertTrue(result.piece().isPresent() == result.problems().isEmpty(), text);
        for (Problem problem : result.problems()) {
            assertTrue(problem.span().end() <= text.length(), problem::toString);
            assertTrue(!problem.message().isBlank() && problem.message().length() < 2000, problem::toString);
        }
        return result.piece().isPresent();
    }

    @Test
    void mutatedDescriptionsNeverThrow() {
        SplittableRandom random = new SplittableRandom(19);
        int read = 0;
        for (int i = 0; i < 3000; i++) {
            read += check(mutated(Bench.CHEST, random)) ? 1 : 0;
        }
        assertTrue(read > 100 && read < 2900, "read " + read);
    }

    @Test
    void randomScrapsNeverThrow() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 3000; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "piece: x\nsize: 1 wide\nbuild: " : "");
            for (int n = random.nextInt(40); n > 0; n--) {
                text.append(SCRAPS[random.nextInt(SCRAPS.length)]);
            }
            check(text.toString());
        }
    }

    @Test
    void editsOfMutatedDescriptionsNeverThrow() {
        SplittableRandom random = new SplittableRandom(23);
        for (int i = 0; i < 60; i++) {
            String text = mutated(Bench.CHEST, random);
            for (String path : PieceEditor.givenPaths(text, Bench.LANGUAGE)) {
                if (random.nextInt(20) == 0) {
                    String scrap = SCRAPS[random.nextInt(SCRAPS.length)];
                    EditResult edit = PieceEditor.replace(text, Bench.LANGUAGE, Bench.WOODS, path, scrap);
                    assertEquals(edit.text().isPresent(), edit.problems().isEmpty());
                }
            }
        }
    }

    @Test
    void theSameTextGivesTheSameResult() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 200; i++) {
            String text = mutated(Bench.CHEST, random);
            assertEquals(Bench.read(text).problems(), Bench.read(text).problems());
        }
    }
}
