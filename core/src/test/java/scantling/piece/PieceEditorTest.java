package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PieceEditorTest {
    private static EditResult edit(String text, String path, String value) {
        return PieceEditor.replace(text, Bench.LANGUAGE, Bench.WOODS, path, value);
    }

    private static String edited(String path, String value) {
        EditResult result = edit(Bench.CHEST, path, value);
        return result.text().orElseThrow(() -> new AssertionError(result.problems()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "size / width | 510 | size: 500 wide | size: 510 wide",
                "size / height | 24 1/2 in | 620 high | 24 1/2 in high",
                "lengths / leg | 45 | leg: 40 | leg: 45",
                "materials / veneered / measured | 12.4 | measured: 12.6 | measured: 12.4",
                "build / top / overhang / front | 15 | front: 12 | front: 15",
                "top / overhang / front | 15 | front: 12 | front: 15",
                "build / 2 / rows / sizes / 1 | 135 | [130, | [135,",
                "build / 2 / sizes / 1 | 135 | [130, | [135,",
                "rows/sizes/3 | 2 shares | rest] | 2 shares]",
                "rows / spaces / lower / build / drawer / side / width | 40 | veneered 1 1/2 in | veneered 40",
                "rows / spaces / 2 / build / 1 / side | cherry | side: veneered 1 1/2 in | side: cherry",
                "boards / parts / shelf / at / across | -5 | across: -3 | across: -5",
                "sizes / drawers / drawer 2 / front / width | 148.5 | width: 149 | width: 148.5",
                "rows / spaces / upper / build / drawer / note | a \"b\" | \"dry: waxed\" | \"a \\\"b\\\"\"",
                "for | N. Odd: joiner # 2 | for: O. Finchweir | for: 'N. Odd: joiner # 2'",
                "for | it's | for: O. Finchweir | for: it's",
                "for | 'quoted' | for: O. Finchweir | for: '''quoted'''",
                "finish / top | oil, twice | waterborne lacquer x 3} | 'oil, twice'}",
            })
    void replacesExactlyTheCharactersOfTheValue(String path, String value, String before, String after) {
        assertEquals(Bench.CHEST.replace(before, after), edited(path, value));
    }

    @Test
    void aPathThatLeadsNowhereIsReportedWithTheNearest() {
        EditResult result = edit(Bench.CHEST, "top / overhang / frnt", "3");
        assertEquals(Optional.empty(), result.text());
        assertTrue(result.problems().get(0).remedy().contains("Maybe \"top / overhang / front\"?"), result::toString);
        assertTrue(
                edit(Bench.CHEST, "top / overhang", "3").problems().toString().contains("not one value"));
    }

    @Test
    void aTextThatWouldNoLongerReadIsNotGiven() {
        EditResult result = edit(Bench.CHEST, "lengths / leg", "reveal * 4");
        assertEquals(Optional.empty(), result.text());
        assertTrue(result.problems().toString().contains("circle"), result::toString);
        assertTrue(edit(Bench.CHEST, "lengths / leg", "1\nx: 2").text().isEmpty());
        assertTrue(edit(Bench.CHEST, "lengths / leg", " ").text().isEmpty());
        assertTrue(edit("a: [", "a", "1").problems().toString().contains("bracket"));
    }

    @Test
    void everyGivenPathLeadsToItsValueAndBackToTheSameBytes() {
        List<String> paths = PieceEditor.givenPaths(Bench.CHEST, Bench.LANGUAGE);
        assertTrue(paths.size() > 40, paths::toString);
        for (String path : paths) {
            String old = PieceEditor.findSpan(Bench.CHEST, Bench.LANGUAGE, path)
                    .map(span -> Bench.CHEST.substring(span.start(), span.end()))
                    .orElseThrow();
            String plain = old.replace("\"", "");
            assertEquals(
                    Optional.of(Bench.CHEST), edit(Bench.CHEST, path, plain).text(), path);
        }
    }

    @Test
    void anEditTakenBackGivesTheSameBytes() {
        SplittableRandom random = new SplittableRandom(20260114);
        List<String> paths = PieceEditor.givenPaths(Bench.CHEST, Bench.LANGUAGE);
        int changed = 0;
        for (int round = 0; round < 300; round++) {
            String path = paths.get(random.nextInt(paths.size()));
            if (path.endsWith("name")) {
                continue;
            }
            String value = List.of("30", "1 3/4 in", "width / 20", "cherry 35", "white oak", "a: b", "it's, so", "rest")
                    .get(random.nextInt(8));
            String old = PieceEditor.findSpan(Bench.CHEST, Bench.LANGUAGE, path)
                    .map(span -> Bench.CHEST.substring(span.start(), span.end()).replace("\"", ""))
                    .orElseThrow();
            Optional<String> there = edit(Bench.CHEST, path, value).text();
            if (there.isPresent()) {
                changed++;
                assertEquals(
                        Optional.of(Bench.CHEST), edit(there.get(), path, old).text(), path + " = " + value);
            }
        }
        assertTrue(changed > 60, "only " + changed);
    }
}
