package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.construct.Tolerances;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Range;
import scantling.measure.Dim;
import scantling.measure.Ledger;
import scantling.measure.Tolerance;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/** Starters and pieces written in a test, built and joined. */
final class Made {
    private Made() {}

    static Stream<String> starters() {
        return Starters.NAMES.stream();
    }

    static Assembly assembly(String starter) {
        try (InputStream in = Starters.open(starter)) {
            return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A piece from its text, which must be right. */
    static Assembly of(String text) {
        ReadResult result = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), result.problems());
        Piece piece = result.piece().orElseThrow();
        Ledger ledger = new Ledger(Map.of(), piece.sizes(), Tolerance.NONE);
        Assembly assembly = Construction.assemble(piece, ledger, Tolerances.standard());
        assertEquals(List.of(), assembly.problems());
        return assembly;
    }

    static Features joined(Assembly assembly) {
        return Joinery.of(assembly, JointRules.standard());
    }

    static Feature feature(Features features, String path) {
        return features.features().stream()
                .filter(each -> each.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is called " + path));
    }

    static String choice(Features features, String owner) {
        return features.choices().stream()
                .filter(each -> each.owner().equals(owner))
                .map(Features.Choice::sentence)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing was chosen for " + owner));
    }

    /** As {@code from-to} in millimetres. */
    static String range(Range range) {
        return mm(range.from()) + "-" + mm(range.to());
    }

    static String mm(Dim dim) {
        return dim.value().millimetres().toPlainString();
    }

    /** What is dialled in for a feature. */
    static String size(Feature feature, String name) {
        return mm(Objects.requireNonNull(feature.setting().sizes().get(name), name));
    }

    /** Where a feature is: along, across, through. */
    static String place(Feature feature) {
        return "%s, %s, %s".formatted(range(feature.along()), range(feature.across()), range(feature.through()));
    }
}
