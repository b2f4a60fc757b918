package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.CutPiece;
import scantling.cutting.PlacedPart;
import scantling.measure.Dim;
import scantling.measure.Explain;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Making;
import scantling.milling.Blank;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;

/**
 * No length that a plan holds, and so none in {@code plan.json}, is a bare number: each goes back to what the maker typed
 * or to a table with its source. Whatever is added to a plan later is walked too.
 */
class EveryLengthTest {
    private static final List<String> PIECES = List.of(
            "lidded-chest", "desk", "stool", "splayed-stool", "tall-cabinet", "bed-frame", "bench", "corner-run");

    static Stream<String> texts() {
        return Stream.concat(
                Starters.NAMES.stream().map(name -> "/scantling/starters/" + name + ".yaml"),
                PIECES.stream().map(name -> "/scantling/pieces/" + name + ".yaml"));
    }

    private static Plan plan(String resource) {
        try (InputStream in = Objects.requireNonNull(EveryLengthTest.class.getResourceAsStream(resource), resource)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
            assertEquals(List.of(), read.problems(), resource);
            return Planner.plan(read.piece().orElseThrow(), BenchLog.EMPTY, Shop.usual())
                    .plan();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everyLengthGoesBackToWhatWasTypedOrATable(String resource) {
        Plan plan = plan(resource);
        assertEquals(List.of(), plan.problems());
        Map<Dim, String> found = new IdentityHashMap<>();
        walk(plan, "plan", found);
        assertTrue(found.size() > 20, found::toString);
        Set<String> bare = new TreeSet<>();
        Explain explain = new Explain(LengthFormat.MM);
        found.forEach((dim, where) -> {
            if (!isRooted(dim)) {
                bare.add(where + ": " + explain.line(dim));
            }
            assertFalse(explain.tree(dim).isBlank());
        });
        assertEquals(Set.of(), bare);
    }

    /** What is sawn is as large as the blank it becomes, whose sizes are explained above; small parts lie in strips. */
    @ParameterizedTest
    @MethodSource("texts")
    void everyPieceOnASawPlanIsTheBlankOfItsPart(String resource) {
        Plan plan = plan(resource);
        Map<String, Blank> blanks = new LinkedHashMap<>();
        plan.blanks().forEach(blank -> blanks.put(blank.part(), blank));
        for (CutGroup group : plan.cuts()) {
            for (CutPiece used : group.plan().used()) {
                for (PlacedPart placed : used.parts()) {
                    Blank blank =
                            Objects.requireNonNull(blanks.get(placed.part().name()), placed.part()::name);
                    Set<Length> sizes = Set.of(
                            blank.rough().length().value(), blank.stripWidth().value());
                    assertEquals(
                            sizes,
                            Set.of(placed.part().length(), placed.part().width()),
                            placed.part().name());
                }
            }
        }
    }

    private static boolean isRooted(Dim dim) {
        Making making = dim.making();
        if (making instanceof Making.Given given) {
            return !given.text().isBlank();
        }
        if (making instanceof Making.LookedUp row) {
            return !row.source().isBlank();
        }
        // What a whole model was solved for names the page of its method in place of a sum.
        return dim.value().isZero()
                || (making instanceof Making.Worked worked && worked.rule().contains("docs/method/"))
                || (!making.inputs().isEmpty()
                        && making.inputs().stream().map(Making.Input::dim).allMatch(EveryLengthTest::isRooted));
    }

    /** All lengths below a value; what the maker wrote and what stock is cut from are beginnings and not walked. */
    private static void walk(Object value, String where, Map<Dim, String> found) {
        if (value instanceof Dim dim) {
            found.putIfAbsent(dim, where);
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> walk(inner, where, found));
        } else if (value instanceof Collection<?> many) {
            many.forEach(one -> walk(one, where, found));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> walk(inner, where + " / " + key, found));
        } else if (value instanceof Record record && !(value instanceof Piece) && !(value instanceof CutGroup)) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                walk(read(component, record), where + " / " + component.getName(), found);
            }
        }
    }

    private static Object read(RecordComponent component, Record record) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException unreadable) {
            throw new AssertionError(component.toString(), unreadable);
        }
    }
}
