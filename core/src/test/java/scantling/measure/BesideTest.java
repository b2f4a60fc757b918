package scantling.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BesideTest {
    @Test
    void whatComesOutOfAllKeepsTheirOrder() {
        List<Callable<Integer>> works = IntStream.range(0, 40)
                .<Callable<Integer>>mapToObj(number -> () -> number)
                .toList();
        assertEquals(IntStream.range(0, 40).boxed().toList(), Beside.all(works));
        assertEquals(List.of(), Beside.all(List.of()));
    }

    @Test
    void whatAnyOfThemThrowsIsThrown() {
        Callable<Integer> good = () -> 1;
        Callable<Integer> bad = () -> {
            throw new IllegalStateException("no");
        };
        assertThrows(IllegalStateException.class, () -> Beside.all(List.of(good, bad)));
        assertThrows(IllegalStateException.class, () -> Beside.all(List.of(bad, good)));
    }
}
