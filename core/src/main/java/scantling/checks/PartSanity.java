package scantling.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Outlines;

/** That every part for itself makes sense: its name, its sizes, its marks and its outline. */
final class PartSanity {
    private static final double FULL_TURN = 360;

    private final Words words;

    PartSanity(Words words) {
        this.words = words;
    }

    List<Finding> check(List<Part> parts) {
        List<Finding> findings = new ArrayList<>();
        Set<String> paths = new HashSet<>();
        for (Part part : parts) {
            if (!paths.add(part.path())) {
                findings.add(stop(part, "Two parts are called %s.".formatted(part.path()), "Call one something else."));
            }
            sizes(part, findings);
            marks(part, findings);
            part.outline().ifPresent(outline -> outline(part, outline, part.width(), findings));
            part.edgeOutline().ifPresent(outline -> outline(part, outline, part.thickness(), findings));
        }
        return findings;
    }

    private void sizes(Part part, List<Finding> findings) {
        Lie lie = part.lie();
        size(part, "length", part.length(), lie.length(), findings);
        size(part, "width", part.width(), lie.width(), findings);
        size(part, "thickness", part.thickness(), lie.thickness(), findings);
    }

    private void size(Part part, String name, Dim size, Axis axis, List<Finding> findings) {
        Dim placed = part.box().extent(axis);
        if (!size.value().isPositive() || !placed.value().isPositive()) {
            findings.add(Words.stop(
                    part.path(),
                    "%s has no %s left: %s."
                            .formatted(
                                    part.path(), name, words.length(size.value().min(placed.value()))),
                    List.of(size),
                    "Give the space it is in more room, or take it out."));
        } else if (!size.equals(placed)) {
            findings.add(Words.stop(
                    part.path(),
                    "%s has a %s of %s but takes up %s."
                            .formatted(part.path(), name, words.length(size.value()), words.length(placed.value())),
                    List.of(size, placed),
                    "Its size and its place must agree."));
        }
    }

    /** Face side, face edge and near end must lie across thickness, width and length; a turn must be less than full. */
    private static void marks(Part part, List<Finding> findings) {
        Lie lie = part.lie();
        boolean legal = lie.length() != lie.thickness()
                && lie.faceSide().axis() == lie.thickness()
                && lie.faceEdge().axis() == lie.width()
                && lie.nearEnd().axis() == lie.length();
        if (!legal) {
            findings.add(stop(part, part.path() + " is marked on sides that do not exist.", "Mark it anew."));
        }
        if (part.turn().filter(turn -> !(Math.abs(turn.degrees()) < FULL_TURN)).isPresent()) {
            findings.add(stop(part, part.path() + " is turned by a full turn or more.", "Turn it by less."));
        }
    }

    private void outline(Part part, Outline outline, Dim most, List<Finding> findings) {
        if (!Outlines.isSimple(outline)) {
            findings.add(stop(
                    part,
                    "The outline of %s crosses itself or holds no wood.".formatted(part.path()),
                    "Give its corners in order, once around."));
        }
        for (Outline.Corner corner : outline.corners()) {
            if (isOutside(corner.along(), part.length()) || isOutside(corner.across(), most)) {
                findings.add(Words.stop(
                        part.path(),
                        "The outline of %s leaves its rectangle at %s along, %s across."
                                .formatted(
                                        part.path(),
                                        words.length(corner.along().value()),
                                        words.length(corner.across().value())),
                        List.of(corner.along(), corner.across()),
                        "Keep its corners inside its sizes."));
            }
        }
    }

    private static boolean isOutside(Dim at, Dim size) {
        return at.value().isNegative() || at.compareTo(size) > 0;
    }

    private static Finding stop(Part part, String sentence, String remedy) {
        return Words.stop(part.path(), sentence, List.of(), remedy);
    }
}
