package scantling.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.construct.Tolerances;
import scantling.measure.Ledger;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.Problem;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/**
 * Starters with a few things changed at random: each is a piece, which is then built and judged, or a list of problems
 * that stand inside the text; never an exception. {@code -Dscantling.mutations=100000} asks for more.
 */
class HostilePiecesTest {
    private static final int MUTATIONS = Integer.getInteger("scantling.mutations", 3000);
    private static final Pattern WORD = Pattern.compile("[A-Za-z]+|\\d+");
    private static final List<String> WORDS = List.of(
            "0",
            "-5",
            "1/0",
            "1 3/4",
            "3' 6\"",
            "12 m",
            "0.0001 mm",
            "99999999999 mm",
            "900000000 km",
            "width",
            "depth - 2",
            "height * height",
            "2 * width",
            "width / 0",
            "(width",
            "rest",
            "2 equal",
            "400 equal",
            "3 shares",
            "oak",
            "oak 45",
            "ply 0",
            "nothing",
            "~",
            "[]",
            "{}",
            "[rest, rest]",
            "yes",
            "{front: 5}",
            "{all: -3}",
            "top",
            "case: oak",
            "- shelves: {of: oak, count: 3}",
            "- doors: {of: oak}",
            "- board: oak",
            "- plinth: oak 90",
            "&a",
            "*a",
            "!!int 3",
            "'",
            "\"",
            "\t",
            ":",
            "#",
            "\n",
            "\u0000",
            "\uD83E",
            "loose tenon",
            "inset",
            "overlay",
            "count: 900");

    private static String text(String starter) {
        try (InputStream in = Starters.open(starter)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    /** One change: a figure or a word becomes another, a line goes, comes twice, or moves in or out. */
    private static String changed(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(8)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(random.nextInt(lines.size()), line);
            case 2 -> lines.set(at, "  " + line);
            case 3 -> lines.set(at, line.replaceFirst("^ {1,2}", ""));
            default -> lines.set(at, wordChanged(line, random));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String wordChanged(String line, SplittableRandom random) {
        Matcher words = WORD.matcher(line);
        List<int[]> found = new ArrayList<>();
        while (words.find()) {
            found.add(new int[] {words.start(), words.end()});
        }
        if (found.isEmpty()) {
            return line;
        }
        int[] one = found.get(random.nextInt(found.size()));
        String with = random.nextInt(4) == 0 ? "" + random.nextInt(3000) : WORDS.get(random.nextInt(WORDS.size()));
        return line.substring(0, one[0]) + with + line.substring(one[1]);
    }

    /** @return whether it could be built */
    private static boolean built(String text) {
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(read.piece().isPresent(), read.problems().isEmpty());
        for (Problem problem : read.problems()) {
            assertTrue(
                    problem.span().end() <= text.length() && !problem.message().isBlank(), problem::toString);
        }
        if (read.piece().isEmpty()) {
            return false;
        }
        Piece piece = read.piece().orElseThrow();
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(Map.of(), piece.sizes(), tolerances.of("measured at the bench"));
        Assembly assembly = Construction.assemble(piece, ledger, tolerances);
        for (Problem problem : assembly.problems()) {
            assertTrue(
                    problem.span().end() <= text.length() && !problem.message().isBlank(), problem::toString);
        }
        if (!assembly.problems().isEmpty()) {
            return false;
        }
        AssemblyCheck.check(assembly)
                .forEach(finding -> assertFalse(finding.sentence().isBlank()));
        FitCheck.check(assembly);
        return true;
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.MINUTES)
    void aChangedStarterIsBuiltOrRefusedAndNothingElse() {
        SplittableRandom random = new SplittableRandom(20);
        List<String> starters =
                Starters.NAMES.stream().map(HostilePiecesTest::text).toList();
        int built = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            String text = starters.get(i % starters.size());
            for (int n = random.nextInt(1, 4); n > 0; n--) {
                text = changed(text, random);
            }
            built += builtOrTold(text) ? 1 : 0;
        }
        assertTrue(built > MUTATIONS / 20 && built < MUTATIONS * 19 / 20, "built " + built + " of " + MUTATIONS);
    }

    private static boolean builtOrTold(String text) {
        try {
            return built(text);
        } catch (RuntimeException | StackOverflowError unexpected) {
            throw new AssertionError("This text ends in an exception:\n" + text, unexpected);
        }
    }
}
