package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ProblemsTest {
    private static List<Problem> problems(String text) {
        return Bench.read(text).problems();
    }

    private static Problem only(String text) {
        List<Problem> problems = problems(text);
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    @Test
    void everythingIsToldAtOnceInTheOrderOfTheText() {
        String text = """
                piece: x
                unti: mm
                size: 500 wide, 420 deep, 0 high
                materials:
                  cherry: {solid: blak cherry, thicknes: 20}
                build:
                  - topp: cherry
                  - top: {of: chery, overhang: {frnt: 12}}
                """;
        List<String> told = problems(text).stream().map(Problem::toString).toList();
        assertEquals(
                List.of(2, 3, 5, 5, 5, 7, 8, 8),
                problems(text).stream().map(problem -> problem.span().line()).toList(),
                told::toString);
        assertTrue(told.get(0).startsWith("line 2, column 1: \"unti\""), told.get(0));
        assertTrue(told.get(0).contains("Maybe \"unit\"?"), told.get(0));
        assertTrue(told.stream().anyMatch(line -> line.contains("Maybe \"thickness\"? Allowed here: solid, sheet")));
        assertTrue(told.stream().anyMatch(line -> line.contains("Maybe \"black cherry\"?")));
        assertTrue(told.stream().anyMatch(line -> line.contains("Maybe \"top\"?")));
        assertTrue(told.stream().anyMatch(line -> line.contains("Maybe \"cherry\"?")));
        assertTrue(told.stream().anyMatch(line -> line.contains("Maybe \"front\"?")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "- top: {of: cherry, overhang: -3} | negative | zero or more",
                "- top: {of: cherry 0} | nothing | greater than zero",
                "- top: {of: cherry, reveal: 400000} | absurdly | 30 m",
                "- top: {of: cherry, edge: ronded} | no choice | Maybe \"rounded\"?",
                "- top: {of: cherry, breadboards: perhaps} | yes or no | ~~",
                "- top: {overhang: 3} | needs \"of\" | For example",
                "- top: | needs \"of\" | For example",
                "- drawer: {boxes: 2.5} | whole number | ~~",
                "- drawer: {boxes: 0} | whole number | ~~",
                "- drawer: {holes: []} | ~~ | ~~",
                "- rows: [] | sizes | ~~",
                "- rows: 3 eqal | no name | Allowed here",
                "- rows: 0 equal | one or more | ~~",
                "- drawer: 7 | fields of its own | ~~",
                "- {top: cherry, of: 3} | one element | dash",
                "- [drawer] | an element | ~~",
                "- boards: {parts: [{of: cherry, outline: [[0, 0], [1, 1]]}]} | three corners | ~~",
                "- boards: {parts: [{of: cherry, outline: [[0, 0], [1, 1], 3]}]} | along, across | ~~",
                "- top: {of: {of: cherry, widht: 3}} | widht | Maybe \"width\"?",
                "- top: {of: cherry, of: cherry} | twice | Keep one",
            })
    void saysWhatIsWrongAndWhatToDo(String step, String said, String remedy) {
        List<Problem> problems = problems(Bench.with(step));
        if (!said.isEmpty()) {
            assertEquals(1, problems.size(), problems::toString);
            assertTrue(problems.get(0).message().contains(said), problems::toString);
            assertTrue(problems.get(0).remedy().contains(remedy), problems::toString);
        }
        assertTrue(!problems.isEmpty() || said.isEmpty());
    }

    @Test
    void anEmptyListOfLengthsIsNotSilentlyLost() {
        assertTrue(only(Bench.with("- drawer: {holes: []}")).message().contains("holes"));
    }

    @Test
    void namesThatGoInACircleAreReportedOnce() {
        Problem circle = only(Bench.with("- drawer", "lengths: {a: b + 1, b: c, c: a * 2, d: 3}"));
        assertTrue(circle.message().contains("a needs b needs c needs a"), circle::toString);
    }

    @Test
    void aLongChainOfNamesIsRefusedRatherThanFollowed() {
        StringBuilder chain = new StringBuilder("lengths:\n");
        for (int i = 0; i < 3000; i++) {
            chain.append("  a%d: a%d + 1\n".formatted(i, i + 1));
        }
        assertTrue(problems(Bench.with("- drawer", chain + "  a3000: 1"))
                .toString()
                .contains("too many other names"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "a: &x 3 | anchor",
                "a: *x | reference",
                "a: !!int 3 | tag",
                "a: !run {x: 1} | tag",
                "a: [1, 2 | bracket",
                "a: {b: 1 | bracket",
                "a: \"open | quote",
                "a: b: c | colon",
                "a: @x | begin with this character",
                "- a | keys with values",
                "just words | keys with values",
                "? [a, b] : c | key must be one word",
            })
    void whatIsNotPlainYamlIsSaidInPlainWords(String line, String said) {
        List<Problem> problems = problems(line + "\n");
        assertTrue(problems.stream().anyMatch(problem -> problem.message().contains(said)), problems::toString);
    }

    @Test
    void tabsAndIndentsAndSecondDocumentsAreNamed() {
        assertTrue(only("a:\n\tb: 1\n").message().contains("tab"));
        assertTrue(only("piece: x\nsize: 3\n build: 4\n").span().line() >= 2);
        assertTrue(problems("piece: x\n---\npiece: y\n").toString().contains("second document"));
        assertTrue(only("").message().contains("says nothing"));
        assertTrue(only("# only a remark\n").message().contains("says nothing"));
    }

    @Test
    void depthAndSizeAreLimited() {
        assertTrue(only("a: " + "[".repeat(100_000)).message().contains("deep"));
        assertTrue(only("a: [" + "1,".repeat(60_000) + "1]").message().contains("more than"));
        assertTrue(only("a".repeat(3_000_000)).message().contains("2 MB"));
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        assertTrue(problem(new byte[3_000_000]).contains("2 MB"));
        assertTrue(problem(new byte[] {'a', 0, 'b'}).contains("no text"));
        assertTrue(problem("piece: caf\u00e9\nx".getBytes(StandardCharsets.ISO_8859_1))
                .contains("line 1 holds a byte (0xE9)"));
        assertEquals(
                Optional.of("piece: caf\u00e9"),
                PieceReader.readBytes("\uFEFFpiece: caf\u00e9".getBytes(StandardCharsets.UTF_8))
                        .text());
    }

    private static String problem(byte[] bytes) {
        return PieceReader.readBytes(bytes).problem().orElseThrow().message();
    }

    @Test
    void countsSlipsOfThePen() {
        assertEquals(0, Suggestions.distance("rail", "rail"));
        assertEquals(1, Suggestions.distance("rial", "rail"));
        assertEquals(3, Suggestions.distance("kitten", "sitting"));
        assertEquals(Optional.empty(), Suggestions.nearest("plinth", List.of("drawer", "top")));
    }
}
