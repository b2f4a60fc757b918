package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PartGroupsTest {
    @Test
    void partsMadeAlikeShareAMarkAndMirroredOnesOnlyTheLetter() {
        List<PartGroup> groups = Shelf.content().groups();
        assertEquals(
                List.of("A1", "A2", "B", "C"),
                groups.stream().map(PartGroup::mark).toList());
        assertEquals(List.of("left end"), groups.get(0).paths());
        assertEquals(List.of("right end"), groups.get(1).paths());
        assertEquals(List.of("lower shelf", "upper shelf"), groups.get(2).paths());
    }

    @Test
    void theSecondOfAMirroredPairNamesTheFirst() {
        List<PartGroup> groups = Shelf.content().groups();
        assertEquals(Optional.empty(), groups.get(0).mirrors());
        assertEquals(Optional.of("A1"), groups.get(1).mirrors());
    }

    @Test
    void lettersThatReadAsFiguresAreLeftOutAndAfterZComeTwo() {
        assertEquals("H", PartGroups.letter(7));
        assertEquals("J", PartGroups.letter(8));
        assertEquals("P", PartGroups.letter(13));
        assertEquals("Z", PartGroups.letter(23));
        assertEquals("AA", PartGroups.letter(24));
    }
}
