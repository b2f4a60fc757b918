package scantling.joinery;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Dim;

/** Divides a stretch into equal things with as much between as they are wide. */
final class Division {
    private Division() {}

    static List<Dim[]> of(Dim[] stretch, int count) {
        Dim whole = stretch[1].minus(stretch[0]);
        long shares = 2L * count - 1;
        List<Dim[]> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(new Dim[] {
                stretch[0].plus(whole.share(2L * i, shares)), stretch[0].plus(whole.share(2L * i + 1, shares))
            });
        }
        return all;
    }
}
