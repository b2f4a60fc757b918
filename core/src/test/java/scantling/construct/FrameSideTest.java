package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.piece.Woods;

/** Part lists worked by hand with a ruler: every expected size is the sum written beside it. */
class FrameSideTest {
    private static final Woods WOODS = new Woods() {
        @Override
        public Optional<String> findSolid(String name) {
            return Optional.of(name);
        }

        @Override
        public Optional<String> findSheet(String name) {
            return Optional.of(name);
        }

        @Override
        public List<String> solids() {
            return List.of();
        }

        @Override
        public List<String> sheets() {
            return List.of();
        }
    };

    private static String text(String resource) {
        try (InputStream file = Objects.requireNonNull(FrameSideTest.class.getResourceAsStream(resource), resource)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Assembly build(String text, Map<String, Length> measured) {
        ReadResult read = PieceReader.read(text, Construction.language(), WOODS);
        assertEquals(List.of(), read.problems());
        Piece piece = read.piece().orElseThrow();
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(measured, piece.sizes(), tolerances.of("measured at the bench"));
        return Construction.assemble(piece, ledger, tolerances);
    }

    private static Assembly build(String text) {
        return build(text, Map.of());
    }

    private static Assembly of(String size, String... steps) {
        return build("""
            piece: test
            unit: mm
            size: %s
            materials:
              oak:   {solid: white oak, thickness: 20}
              leg:   {solid: white oak, thickness: 60}
              ply:   {sheet: birch plywood, thickness: 18}
              box:   {sheet: birch plywood, thickness: 12}
              thick: {sheet: birch plywood, thickness: 18}
              thin:  {sheet: birch plywood, thickness: 6}
            build:
              - %s
            """.formatted(size, String.join("\n  - ", steps)));
    }

    private static void has(Assembly assembly, String... parts) {
        List<String> list = Said.list(assembly);
        for (String part : parts) {
            assertTrue(list.contains(part), () -> part + " is not in " + String.join("\n", list));
        }
    }

    private static void complains(Assembly assembly, String words) {
        assertTrue(
                assembly.problems().stream()
                        .anyMatch(problem -> problem.message().contains(words)),
                assembly.problems()::toString);
    }

    @Test
    void the_bedside_chest_comes_out_as_worked_by_hand() {
        Assembly chest = build(text("/scantling/starters/bedside-chest.yaml"));
        Judge.sound(chest);
        assertEquals(37, chest.parts().size());
        has(
                chest,
                "top / core: 460 x 400 x 18", // 500 - 2 x 20, 420 - 20
                "left end / front stile: 602 x 40 x 30", // 620 - 18
                "left end / top rail: 328 x 60 x 20", // 420 - 12 - 2 x 40, loose tenons add nothing
                "right end / bottom rail: 328 x 80 x 20",
                // 602 - 60 - 60 - 80 = 402 and 2 x (10 - 1): 420; 328 + 18 = 346
                "right end / panel: 420 x 346 x 12.6",
                "low / front rail: 424 x 80 x 20", // 500 - 2 x 8 - 2 x 30
                "high / back rail: 424 x 40 x 20",
                // over the low rail at 140, under the high one at 582: 442 less 4 gaps of 2 is 434
                "drawers / drawer 1 / front: 420 x 130 x 20", // 424 - 4
                "drawers / drawer 3 / front: 420 x 154 x 20", // 434 - 130 - 150
                // between the walls 424, inside 424 - 42 = 382 (21 each side, drawer supplier guide)
                "drawers / drawer 1 / box / front: 382 x 113 x 12", // 130 + 4 - 21 high
                "drawers / drawer 1 / box / left side: 350 x 113 x 12",
                "drawers / drawer 3 / box / back: 382 x 137 x 12", // 154 + 4 - 21
                // 382 + 2 x 5.5; 350 - 24 + 2 x 5.5
                "drawers / drawer 2 / box / floor: 393 x 337 x 6");
    }

    @Test
    void the_sideboard_comes_out_as_worked_by_hand() {
        Assembly sideboard = build(text("/scantling/starters/sideboard.yaml"));
        Judge.sound(sideboard);
        // inside the case 1500 - 36 = 1464, less a divider 18 and 500: 946 for two doors; 3 gaps: 940, each 470
        // high: 850 - 20 - 80 - 36 = 714, less 4 is 710
        has(
                sideboard,
                "left / doors / left door / left stile: 710 x 60 x 20",
                "left / doors / left door / top rail: 400 x 60 x 20", // 470 - 120 + 2 x 25
                // 710 - 60 - 80 + 2 x 7 = 584; 470 - 120 + 14 = 364
                "left / doors / right door / panel: 584 x 364 x 6",
                "right / drawers / drawer 1 / front: 496 x 120 x 20", // 500 - 4
                "right / drawers / drawer 4 / front: 496 x 224 x 20", // 714 - 5 x 2 - 480
                // outside 500 - 25.4 (1/2 in each side) = 474.6, inside 24 less; 444 - 20 - 3 = 421: slide 400
                "right / drawers / drawer 1 / box / front: 450.6 x 111.3 x 12", // 124 - 12.7
                "right / drawers / drawer 1 / box / right side: 400 x 111.3 x 12");
    }

    @Test
    void the_dining_table_comes_out_as_worked_by_hand() {
        Assembly table = build(text("/scantling/starters/dining-table.yaml"));
        Judge.sound(table);
        has(
                table,
                "legs and rails / left front leg: 722 x 75 x 75", // 750 - 28
                "legs and rails / front rail: 1640 x 110 x 25", // 2000 - 300 - 150 + 2 x 45
                "legs and rails / right rail: 770 x 110 x 25"); // 950 - 120 - 150 + 90
        Part leg = table.parts().stream()
                .filter(part -> part.path().endsWith("right back leg"))
                .findFirst()
                .orElseThrow();
        // straight down to the underside of the rail: 722 - 110
        assertEquals(
                Length.mm("612"),
                leg.outline().orElseThrow().corners().get(3).along().value());
        assertEquals(
                Length.mm("45"),
                leg.outline().orElseThrow().corners().get(4).across().value());
    }

    @Test
    void pieces_that_no_starter_shows_stand_too() {
        Judge.sound(build(text("/scantling/pieces/desk.yaml")));
        Assembly stool = build(text("/scantling/pieces/stool.yaml"));
        Judge.sound(stool);
        // 15 in - 2 x 1 in - 2 x 1 1/2 in is 10 in; the tenons end where they meet: 1 1/2 - 1/8 - 7/8 = 1/2 in each
        has(stool, "legs and rails / front rail: 279.4 x 63.5 x 22.225"); // 11 in
    }

    /** Printed by two drawer suppliers: a 15 in opening takes a box 14 5/8 in wide with 5/8 in sides, 14 3/8 in with 1/2 in. */
    @Test
    void undermount_boxes_agree_with_printed_tables() {
        assertAsPrinted("14 5/8", "5/8");
        assertAsPrinted("14 3/8", "1/2");
    }

    private static void assertAsPrinted(String printed, String side) {
        Assembly drawer = build("""
            piece: test
            unit: in
            size: 15 wide, 20 deep, 6 high
            materials:
              front: {solid: white oak, thickness: 3/4}
              box:   {solid: white oak, thickness: %s}
              thin:  {sheet: birch plywood, thickness: 1/4}
            build:
              - drawer: {fronts: front, box: {of: box, floor: thin}}
            """.formatted(side));
        assertEquals(List.of(), drawer.problems());
        double inside = mm(drawer, "drawer / box / inside width");
        double outside = inside + 2 * mm(drawer, "drawer / box / left side / thickness");
        String[] parts = printed.split("[ /]");
        double expected =
                25.4 * (Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]) / Double.parseDouble(parts[2]));
        assertEquals(expected, outside, 0.8); // printed to 1/16 in
    }

    private static double mm(Assembly assembly, String path) {
        return Objects.requireNonNull(assembly.names().get(path), path).value().toMillimetres();
    }

    @Test
    void thick_sides_take_the_slide_made_for_them() {
        Assembly drawer = of("500 wide, 450 deep, 150 high", "drawer: {fronts: oak, box: {of: thick, floor: thin}}");
        // sides 18, more than 16: inside 500 - 49
        assertEquals(451, mm(drawer, "drawer / box / inside width"), 0);
    }

    @Test
    void a_measured_opening_moves_the_box_but_not_what_it_does_not_touch() {
        String text = text("/scantling/starters/bedside-chest.yaml");
        Assembly chest = build(text, Map.of("drawers / drawer 2 / opening / width", Length.mm("423.2")));
        has(chest, "drawers / drawer 2 / box / front: 381.2 x 133 x 12"); // 423.2 - 42
        has(chest, "drawers / drawer 1 / box / front: 382 x 113 x 12");
    }

    @Test
    void a_measured_rail_moves_the_far_stile_of_its_frame() {
        String text = text("/scantling/starters/sideboard.yaml");
        Assembly sideboard = build(text, Map.of("left / doors / left door / bottom rail / length", Length.mm("399.4")));
        has(
                sideboard,
                "left / doors / left door / top rail: 399.4 x 60 x 20", // not cut yet, so as long as the other
                "left / doors / left door / panel: 584 x 363.4 x 6"); // 0.6 less than 364
    }

    @Test
    void panel_corners_are_rounded_to_the_bit() {
        Assembly chest = build(text("/scantling/starters/bedside-chest.yaml"));
        Part panel = chest.parts().stream()
                .filter(part -> part.path().equals("left end / panel"))
                .findFirst()
                .orElseThrow();
        var corners = panel.outline().orElseThrow().corners();
        double area = 0;
        for (int i = 0; i < corners.size(); i++) {
            var a = corners.get(i);
            var b = corners.get((i + 1) % corners.size());
            area += (a.along().value().toMillimetres() * b.across().value().toMillimetres()
                            - b.along().value().toMillimetres()
                                    * a.across().value().toMillimetres())
                    / 2;
        }
        // a rectangle less four corners of (1 - pi/4) r squared
        assertEquals(420 * 346 - 36 * (4 - Math.PI), area, 2);
    }

    @Test
    void slats_leave_even_gaps_and_a_rod_hangs_between_boards() {
        Assembly rack = of(
                "640 wide, 400 deep, 900 high",
                "ends: {of: ply}",
                "rails: {name: low, of: oak 60, on: back, at: [0]}",
                "rails: {name: high, of: oak 60, on: back}",
                "hanging rail: oak",
                "slats: {of: oak 50, count: 7, housed: 10}");
        Judge.sound(rack);
        assertEquals((640 - 36 - 350) / 8.0, mm(rack, "slats / gap"), 1e-6);
        has(rack, "slats / slat 7: 800 x 50 x 20"); // 900 - 120 + 2 x 10
        has(rack, "hanging rail / rail: 604 x 20 x 20");
    }

    @Test
    void what_cannot_be_is_told_with_its_numbers() {
        complains(
                of(
                        "100 wide, 400 deep, 300 high",
                        "ends: {frame: {stiles: leg 60, top rail: oak 160, bottom rail: oak 150}}"),
                "The rails take 310.0 mm of a frame that is 300.0 mm high");
        complains(
                of(
                        "500 wide, 400 deep, 300 high",
                        "drawers: {rows: [200, 150], fronts: oak, box: {of: box, floor: thin}}"),
                "take 350.0 mm; without the gaps there are 294.0 mm");
        complains(of("500 wide, 400 deep, 300 high", "rails: oak 60"), "nothing to be joined to on the left");
        complains(of("500 wide, 400 deep, 300 high", "ends: {name: side}"), "needs either a frame or a plain board");
    }
}
