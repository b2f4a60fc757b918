package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Range;
import scantling.measure.Dim;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;
import scantling.plan.Started;
import scantling.stock.HardwareProfiles;

/** Pieces from their texts with the work of their hardware. */
record Made(Assembly assembly, Features features) {
    private static final String MATERIALS = """
        materials:
          ply: {sheet: birch plywood, thickness: 18}
          box: {sheet: birch plywood, thickness: 12}
          thin: {sheet: birch plywood, thickness: 6}
          oak: {solid: white oak, thickness: 20}
        """;

    static Made of(String text) {
        return of(text, HardwareProfiles.standard());
    }

    static Made of(String text, HardwareProfiles profiles) {
        ReadResult result = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), result.problems());
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), usual.effort(), profiles);
        Assembly assembly = Planner.assemble(result.piece().orElseThrow(), BenchLog.EMPTY, shop);
        assertEquals(List.of(), assembly.problems());
        return new Made(assembly, Hardware.of(assembly, profiles));
    }

    /** A piece in millimetres of a few usual materials. */
    static Made of(String size, String build) {
        return of("piece: test\nunit: mm\nsize: " + size + "\n" + MATERIALS + "build:\n" + build.indent(2));
    }

    /** The same planned as a whole, joints and all. */
    static Plan planned(String size, String build) {
        String text = "piece: test\nunit: mm\nsize: " + size + "\n" + MATERIALS + "build:\n" + build.indent(2);
        ReadResult result = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        return Planner.plan(result.piece().orElseThrow(), BenchLog.EMPTY, Shop.usual())
                .plan();
    }

    static Made starter(String name) {
        return of(text(name));
    }

    /** The text of a starter. */
    static String text(String starter) {
        return Started.text(starter);
    }

    Part part(String path) {
        return assembly.parts().stream()
                .filter(part -> part.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No part (" + path + ") among "
                        + assembly.parts().stream().map(Part::path).toList()));
    }

    /** {@code name: kind in surface, along, across, depth}, middles in millimetres, of what a fitting takes from a part. */
    List<String> on(String part, String owner) {
        return features.features().stream()
                .filter(feature ->
                        feature.part().equals(part) && feature.owner().equals(owner))
                .map(feature -> "%s: %s %s in %s, along %s, across %s, deep %s"
                        .formatted(
                                feature.path().substring(owner.length() + 3),
                                feature.kind().words(),
                                feature.radius().map(r -> plain(r.times(2))).orElse("-"),
                                feature.surface().words(),
                                plain(feature.along().middle()),
                                plain(feature.across().middle()),
                                plain(feature.depth())))
                .toList();
    }

    List<Feature> owned(String owner) {
        return features.features().stream()
                .filter(feature -> feature.owner().equals(owner))
                .toList();
    }

    List<String> findings(String subject) {
        return features.findings().stream()
                .filter(finding -> finding.subject().equals(subject))
                .map(finding -> finding.severity() + " " + finding.sentence() + " " + finding.remedy())
                .toList();
    }

    static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }

    static double middle(Range range) {
        return mm(range.middle());
    }

    static String plain(Dim dim) {
        return dim.value().millimetres().stripTrailingZeros().toPlainString();
    }
}
