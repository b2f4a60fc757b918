package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands as a new user would give them. */
class CommandLineTest extends AtTheConsole {
    private Path started(String starter) {
        Path file = shop.resolve(starter + ".yaml");
        assertEquals(Exit.WELL, scantling("new", file.toString()).code());
        return file;
    }

    @ParameterizedTest
    @ValueSource(strings = {"wall-shelf", "bedside-chest"})
    void aStarterIsPlannedAndItsWholePacketWritten(String starter) throws IOException {
        Path out = shop.resolve("out");
        Answer answer = scantling("plan", started(starter).toString(), "--out", out.toString());
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        for (String name : List.of("packet.pdf", "job-sheet.html", "parts.csv", "plan.json")) {
            assertTrue(Files.size(out.resolve(name)) > 200, name);
        }
        try (Stream<Path> left = Files.walk(out)) {
            assertEquals(
                    0,
                    left.filter(file -> file.getFileName().toString().endsWith(".draft"))
                            .count());
        }
    }

    @Test
    void helpNamesEveryCommand() {
        Answer answer = scantling("--help");
        assertEquals(Exit.WELL, answer.code());
        for (String command : List.of("new", "plan", "check", "explain", "edit", "cut", "shop", "schema")) {
            assertTrue(answer.out().contains("  " + command), command);
        }
    }

    @Test
    void explainGoesDownToWhatWasTyped() {
        Path file = started("wall-shelf");
        Answer all = scantling("explain", file.toString());
        assertEquals(Exit.WELL, all.code(), all::toString);
        String first = all.out()
                .lines()
                .filter(line -> line.contains(" / length "))
                .findFirst()
                .orElseThrow();
        String name = first.substring(0, first.indexOf(" / length") + " / length".length());
        Answer one = scantling("explain", file.toString(), name);
        assertTrue(one.out().contains("given on line"), one::out);
    }

    @Test
    void aNameThatIsNotThereIsAnsweredWithTheNearest() {
        assertRefused(scantling("explain", started("wall-shelf").toString(), "no such number"), "no such number");
    }

    @Test
    void anEditTouchesOnlyTheValue() throws IOException {
        Path file = started("bedside-chest");
        String before = Files.readString(file);
        Answer answer = scantling("edit", file.toString(), "size / width", "512");
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        String after = Files.readString(file);
        int from = 0;
        while (before.charAt(from) == after.charAt(from)) {
            from++;
        }
        assertTrue(before.length() - after.length() <= 2 && before.length() - after.length() >= -2);
        int tail = 0;
        while (before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
            tail++;
        }
        assertTrue(after.length() - tail - from <= 3, "more than one value changed");
        assertEquals(
                Exit.WELL,
                scantling("edit", file.toString(), "size / width", before.substring(from - 1, from + 2))
                        .code());
    }

    @Test
    void anEditThatDoesNotReadIsRefusedAndTheFileStaysAsItWas() throws IOException {
        Path file = started("wall-shelf");
        byte[] before = Files.readAllBytes(file);
        assertRefused(scantling("edit", file.toString(), "size / width", "twelve parsecs"));
        assertRefused(scantling("edit", file.toString(), "no / such / value", "12"));
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void theRemedyOfAFindingIsDoneWithOneCommand() throws IOException {
        Path file = file("shelf.yaml", """
            piece: Wall unit
            size: 1200 wide, 280 deep, 800 high
            materials: {pine: {solid: eastern white pine, thickness: 18}}
            build:
              - case: {of: pine}
              - shelves: {of: pine, count: 1, held: dado}
            """);
        Answer before = scantling("check", file.toString());
        assertTrue(before.out().contains("edit --remedy 'top / sag'"), before::toString);
        Answer done = scantling("edit", file.toString(), "--remedy", "top / sag", "--way", "2");
        assertEquals(Exit.WELL, done.code(), done::toString);
        assertFalse(scantling("check", file.toString()).out().contains("top / sag"));
        assertRefused(scantling("edit", file.toString(), "--remedy", "top / sag"), "offers 0 changes");
    }

    @Test
    void aFindingIsTakenAsItIsWithOneCommandAndTheReasonStandsInThePlan() throws IOException {
        Path file = started("bedside-chest");
        String name = "Bedside chest, three drawers / tipping";
        for (String reason : List.of("it is screwed to the wall", "anchored, see the quote")) {
            Answer done = scantling("edit", file.toString(), "--accept", name, "--because", reason);
            assertEquals(Exit.WELL, done.code(), done::toString);
            assertTrue(scantling("check", file.toString()).out().contains("Accepted: " + reason));
            name = "Bedside chest, three drawers / anchoring";
        }
        assertRefused(scantling("edit", file.toString(), "--accept", "nothing", "--because", "no"), "anchoring");
    }

    @Test
    void newNeverWritesOverAFile() throws IOException {
        Path file = started("wall-shelf");
        Files.writeString(file, "mine");
        assertRefused(scantling("new", file.toString()), "already there");
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void allProblemsAreToldAtOnceWithTheirPlaces() throws IOException {
        Path file = file("bad.yaml", """
            piece: Bad
            size: 800 wide, 200 deep, 300 hgih
            materials:
              oak: {solid: wite oak, thickness: -20}
            build:
              - shelfs: {of: oak}
            """);
        Answer answer = scantling("check", file.toString());
        assertRefused(answer, "bad.yaml:2:", "bad.yaml:4:", "bad.yaml:6:", "white oak", "shelves");
    }

    @Test
    void whatIsNoPieceIsRefusedInPlainWords() throws IOException {
        assertRefused(scantling("plan", shop.toString()), "is a folder");
        assertRefused(scantling("plan", shop.resolve("absent.yaml").toString()), "is not there");
        Path binary = Files.write(shop.resolve("binary.yaml"), new byte[] {0, 1, 2, 3, 0});
        assertRefused(scantling("plan", binary.toString()));
        Path latin =
                Files.write(shop.resolve("latin.yaml"), "piece: Tisch für zwei".getBytes(StandardCharsets.ISO_8859_1));
        assertRefused(scantling("plan", latin.toString()));
        Path empty = file("empty.yaml", "");
        assertRefused(scantling("plan", empty.toString()));
        Path large = shop.resolve("large.yaml");
        try (RandomAccessFile sparse = new RandomAccessFile(large.toFile(), "rw")) {
            sparse.setLength(50_000_000);
        }
        assertRefused(scantling("plan", large.toString()), "million bytes");
    }

    @Test
    void aYamlBombIsRefusedAtOnce() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1));
        }
        assertRefused(scantling("plan", file("bomb.yaml", bomb.toString()).toString()));
        assertRefused(scantling(
                "plan", file("deep.yaml", "build: " + "[".repeat(5000)).toString()));
        assertRefused(scantling(
                "plan", file("tag.yaml", "piece: !!java.net.URL [x]\n").toString()));
    }

    @Test
    void aFolderThatCannotBeWrittenLeavesNothingBehind() throws IOException {
        Path inTheWay = file("out", "a file, not a folder");
        Answer answer = scantling("plan", started("wall-shelf").toString(), "--out", inTheWay.toString());
        assertRefused(answer, "cannot be written");
        assertEquals("a file, not a folder", Files.readString(inTheWay));
    }

    @Test
    void aFolderBelowAFileOrWhereNobodyMayWriteIsNamedWithTheReason() throws IOException {
        Path piece = started("wall-shelf");
        byte[] before = Files.readAllBytes(piece);
        Answer below = scantling(
                "plan", piece.toString(), "--out", piece.resolve("out").toString());
        assertRefused(below, "a file stands where a folder is needed");
        assertArrayEquals(before, Files.readAllBytes(piece));
        // Nobody may make a folder among the processes of a machine, not even root.
        if (Files.isDirectory(Path.of("/proc/self"))) {
            assertRefused(scantling("plan", piece.toString(), "--out", "/proc/scantling/out"), "cannot be written");
        }
        try (Stream<Path> left = Files.list(shop)) {
            assertEquals(1, left.count());
        }
    }

    @Test
    void circlesWrongUnitsAndAbsurdLengthsAreAllToldAtOnce() throws IOException {
        Path file = file("absurd.yaml", """
            piece: Absurd
            unit: mm
            size: 800 wide, 200 deep, 300 high
            lengths: {a: b + 1, b: a * 2, c: nothing / 2, d: 5 furlong, e: 1/0}
            materials:
              oak: {solid: white oak, thickness: 20}
            build:
              - board: {of: oak, off: 99999999999999 m}
              - board: {of: oak, off: 80000}
              - board: {of: oak, on: top, inset: -4}
            """);
        Answer answer =
                scantling("plan", file.toString(), "--out", shop.resolve("out").toString());
        assertRefused(
                answer,
                "goes in a circle",
                "\"nothing\" is no length",
                "\"furlong\" is no unit",
                "over zero",
                "absurd.yaml:8:",
                "absurd.yaml:9:",
                "absurd.yaml:10:");
        assertFalse(Files.exists(shop.resolve("out")));
    }
}
