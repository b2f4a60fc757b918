package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.construct.Said.an;
import static scantling.construct.Said.build;
import static scantling.construct.Said.list;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;
import scantling.piece.Material;
import scantling.space.Side;

/**
 * Part lists worked by hand with a ruler: every expected size is the sum written beside it. Depths by common practice:
 * a dado a third of 18 mm is 6, a rabbet half of 18 mm is 9, a groove a third of 18 mm is 6.
 */
class CaseSideTest {
    private static final Material PLY = Said.sheet("ply", "18");
    private static final Material THIN = Said.sheet("thin", "6");
    private static final Material OAK = Said.solid("oak", "20");

    private static Length number(Assembly assembly, String path) {
        return Objects.requireNonNull(assembly.names().get(path), path).value();
    }

    private static Said box(String in) {
        Said said = an("case").of("of", PLY);
        return said.part("back", said.inside("back").of("of", THIN).is("in", in));
    }

    @Test
    void a_case_with_its_back_in_a_rabbet() {
        Assembly bookcase = build("800", "300", "1800", Map.of(), box("rabbet").length("bottom up", "80"));
        Judge.sound(bookcase);
        assertEquals(
                List.of(
                        "left side: 1800 x 300 x 18",
                        // between sides 800 - 2 x 18 = 764, and 6 into each: 776; back 6 thick: 300 - 6 = 294
                        "bottom: 776 x 294 x 18",
                        "right side: 1800 x 300 x 18",
                        // flush above, so 9 into each: 764 + 18 = 782
                        "top: 782 x 294 x 18",
                        // from under the bottom at 80 to the top: 1720; 9 into each side: 782
                        "back: 1720 x 782 x 6"),
                list(bookcase));
    }

    @Test
    void a_case_with_its_back_in_a_groove() {
        Assembly chest = build("600", "400", "700", Map.of(), box("groove"));
        Judge.sound(chest);
        assertEquals(
                List.of(
                        "left side: 700 x 400 x 18",
                        "bottom: 582 x 400 x 18", // 600 - 36 + 2 x 9
                        "right side: 700 x 400 x 18",
                        "top: 582 x 400 x 18",
                        // groove 6 less 0.5 of air: 700 - 36 + 11 = 675 high, 564 + 11 = 575 wide
                        "back: 675 x 575 x 6"),
                list(chest));
    }

    @Test
    void a_case_with_top_rails_and_its_back_laid_on() {
        Assembly unit = build(
                "600",
                "560",
                "720",
                Map.of(),
                box("laid on").is("joint", "dowel").of("top rails", PLY, "100"));
        Judge.sound(unit);
        assertEquals(
                List.of(
                        "left side: 720 x 554 x 18", // 560 - 6
                        "bottom: 564 x 554 x 18", // 600 - 36
                        "right side: 720 x 554 x 18",
                        "front top rail: 564 x 100 x 18",
                        "back top rail: 564 x 100 x 18",
                        "back: 720 x 600 x 6"),
                list(unit));
    }

    @Test
    void what_follows_a_measured_bottom_follows() {
        Assembly measured = build("800", "300", "1800", Map.of("bottom / length", Length.mm("780")), box("rabbet"));
        Judge.sound(measured);
        // 2 mm shorter than 782 by plan: everything between the sides is 2 mm shorter
        assertTrue(list(measured).contains("top: 780 x 294 x 18"), list(measured)::toString);
        assertTrue(list(measured).contains("back: 1800 x 780 x 6"), list(measured)::toString);
    }

    @Test
    void columns_and_shelves_in_a_case() {
        Said columns = an("columns")
                .equal(3)
                .of("divider", PLY)
                .steps("each", an("shelves").of("of", PLY).count("count", 1));
        Assembly rack = build("1200", "300", "636", Map.of(), box("rabbet"), columns);
        Judge.sound(rack);
        List<String> parts = list(rack);
        // inside 636 - 36 = 600 high, and 6 into bottom and top
        assertTrue(parts.contains("divider 2: 612 x 294 x 18"), parts::toString);
        // inside 1200 - 36 = 1164, less two dividers: 1128, a third is 376, and 6 into each neighbour
        assertTrue(parts.contains("column 1 / shelf: 388 x 294 x 18"), parts::toString);
        assertTrue(parts.contains("column 3 / shelf: 388 x 294 x 18"), parts::toString);
        assertEquals(
                Length.mm("376"), number(rack, "column 2 / opening / width"));
        // (600 - 18) / 2
        assertEquals(
                Length.mm("291"),
                number(rack, "column 2 / opening above shelves / height"));
    }

    @Test
    void rows_count_from_the_top_and_may_have_rails() {
        Said rows = an("rows").fixed("100", "200", "264").of("rail", OAK, "50");
        Assembly chest = build("600", "400", "640", Map.of(), box("rabbet"), rows);
        Judge.sound(chest);
        // 640 - 36 = 604 = 100 + 20 + 200 + 20 + 264; rails 600 - 36 + 2 x 6 = 576
        assertTrue(list(chest).contains("rail 2: 576 x 50 x 20"), list(chest)::toString);
        assertEquals(
                Length.mm("200"), number(chest, "row 2 / opening / height"));
    }

    @Test
    void sizes_that_do_not_fill_their_space_are_a_problem_with_the_difference() {
        Assembly wrong =
                build("600", "400", "640", Map.of(), box("rabbet"), an("rows").fixed("100", "200"));
        assertTrue(wrong.problems().get(0).message().contains("304.0 mm"), wrong.problems()::toString);
    }

    @Test
    void adjustable_shelves_have_air_around_them_and_four_pins() {
        Assembly unit = build(
                "800",
                "300",
                "700",
                Map.of(),
                box("rabbet"),
                an("shelves").of("of", PLY).count("count", 1).is("held", "pins"));
        Judge.sound(unit);
        // 800 - 36 - 2 x 1 = 762; 294 - 1 = 293
        assertTrue(list(unit).contains("adjustable shelf: 762 x 293 x 18"), list(unit)::toString);
        assertEquals(4, unit.fittings().get(0).count());
    }

    @Test
    void a_lipped_top_lies_on_its_case() {
        Said top = an("top").of("of", PLY).side("inset", Side.FRONT, "12");
        top.part("lipped", top.inside("lipped").of("with", OAK));
        Assembly chest = build("500", "420", "620", Map.of(), top, box("rabbet"));
        Judge.sound(chest);
        List<String> parts = list(chest);
        assertTrue(parts.contains("top / core: 460 x 400 x 18"), parts::toString); // 500 - 40, 420 - 20
        assertTrue(parts.contains("top / front lipping: 500 x 18 x 20"), parts::toString);
        assertTrue(parts.contains("top / left lipping: 420 x 18 x 20"), parts::toString);
        assertTrue(parts.contains("left side: 602 x 408 x 18"), parts::toString); // 620 - 18, 420 - 12
    }

    @Test
    void breadboard_ends_take_the_tenons_of_the_top() {
        Said top = an("top").of("of", OAK);
        top.part("breadboard", top.inside("breadboard").of("of", OAK, "90"));
        Assembly table = build("1800", "900", "740", Map.of(), top);
        Judge.sound(table);
        assertEquals(
                List.of(
                        "top / panel: 1680 x 900 x 20", // 1800 - 2 x 90 + 2 x 30
                        "top / left breadboard end: 900 x 90 x 20",
                        "top / right breadboard end: 900 x 90 x 20"),
                list(table));
    }

    @Test
    void a_face_frame_and_a_plinth_before_their_case() {
        Assembly cupboard = build(
                "800",
                "400",
                "900",
                Map.of(),
                an("plinth").of("of", PLY, "100").side("set back", Side.FRONT, "50"),
                an("face frame").of("stiles", OAK, "45").is("joint", "mortise and tenon"),
                box("rabbet"));
        Judge.sound(cupboard);
        List<String> parts = list(cupboard);
        assertTrue(parts.contains("plinth / left end: 314 x 100 x 18"), parts::toString); // 400 - 50 - 36
        assertTrue(parts.contains("face frame / top rail: 770 x 45 x 20"), parts::toString); // 800 - 90 + 60
        assertTrue(parts.contains("left side: 800 x 380 x 18"), parts::toString); // 900 - 100, 400 - 20
    }

    @Test
    void a_loose_part_inside_another_is_a_problem_with_the_depth() {
        Said block = an("loose").named("block").of("of", OAK, "60").length("length", "100");
        block.part("at", block.inside("at").length("up", "-15"));
        Assembly wrong = build("600", "300", "200", Map.of(), an("board").named("shelf").of("of", OAK), block);
        assertTrue(wrong.problems().get(0).message().contains("15.0 mm"), wrong.problems()::toString);
    }

    @Test
    void a_panel_goes_into_what_bounds_it() {
        Assembly box = build(
                "600",
                "300",
                "400",
                Map.of(),
                an("board").named("left").of("of", OAK).is("on", "left"),
                an("board").named("right").of("of", OAK).is("on", "right"),
                an("panel").of("of", THIN));
        // 600 - 40 = 560; a third of 20 is 7 to the nearest mm, less 0.5 of air at each edge: 573
        assertTrue(list(box).contains("panel: 573 x 400 x 6"), list(box)::toString);
    }
}
