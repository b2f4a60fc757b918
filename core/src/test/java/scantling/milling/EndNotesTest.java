package scantling.milling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.piece.Material;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.EndCut;
import scantling.space.Ends;
import scantling.space.Lie;
import scantling.space.Side;

class EndNotesTest {
    private static Part ending(EndCut near, EndCut far) {
        Dim sixty = Dim.given(Length.mm(60), "test", "60", new Span(1, 1, 0, 2));
        Material oak = new Material(
                "oak",
                Material.Kind.SOLID,
                "oak",
                sixty,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
        return new Part(
                "rail",
                oak,
                sixty,
                sixty,
                sixty,
                Box.standing(sixty, sixty, sixty),
                Lie.along(Axis.ACROSS, Side.FRONT),
                Optional.empty(),
                Optional.empty(),
                new Ends(near, far),
                Optional.empty(),
                Set.of(),
                false);
    }

    @Test
    void squareEndsNeedNoNote() {
        assertEquals(List.of(), EndNotes.of(ending(EndCut.SQUARE, EndCut.SQUARE)));
    }

    @Test
    void parallelEndsAreSetOnce() {
        // One in ten is 5.71 degrees.
        EndCut cut = new EndCut(0.1, 0);
        assertEquals(
                "Both ends, parallel: mitre gauge 5.7\u00b0 off square. The long point of the far end is at its back"
                        + " edge.",
                EndNotes.of(ending(cut, cut)).get(0));
    }

    @Test
    void eachSlantedEndSaysWhereItsLongPointIs() {
        List<String> notes = EndNotes.of(ending(new EndCut(0.1, 0.1), new EndCut(-0.1, 0)));
        assertEquals(
                "Near end: mitre gauge 5.7\u00b0 off square, blade tilted 5.7\u00b0. The long point of the near end is"
                        + " at its face edge and its face side.",
                notes.get(0));
        assertEquals(
                "Far end: mitre gauge 5.7\u00b0 off square. The long point of the far end is at its face edge.",
                notes.get(1));
    }
}
