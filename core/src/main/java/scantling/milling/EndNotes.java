package scantling.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import scantling.construct.Part;
import scantling.space.EndCut;

/** How the saw is set for ends that are not square. */
final class EndNotes {
    private static final double NOTHING = 0.05;

    private EndNotes() {}

    /** A sentence for each slanted end, or one for both when they are cut alike; angles to a tenth of a degree. */
    static List<String> of(Part part) {
        EndCut near = part.ends().near();
        EndCut far = part.ends().far();
        if (part.ends().areSquare()) {
            return List.of();
        }
        List<String> notes = new ArrayList<>();
        if (near.equals(far)) {
            notes.add("Both ends, parallel: " + setting(near) + ". " + longPoint("far end", far, true) + ".");
        } else {
            addEnd("Near end", near, false, notes);
            addEnd("Far end", far, true, notes);
        }
        notes.add("Its length is from long point to long point; shoulders are cut at the angle of the end.");
        return notes;
    }

    private static void addEnd(String end, EndCut cut, boolean far, List<String> notes) {
        if (!cut.isSquare()) {
            notes.add("%s: %s. %s.".formatted(end, setting(cut), longPoint(end.toLowerCase(Locale.ROOT), cut, far)));
        }
    }

    private static String setting(EndCut cut) {
        List<String> angles = new ArrayList<>();
        double mitre = Math.abs(cut.mitreDegrees());
        double tilt = Math.abs(cut.tiltDegrees());
        if (mitre >= NOTHING) {
            angles.add(String.format(Locale.ROOT, "mitre gauge %.1f\u00b0 off square", mitre));
        }
        if (tilt >= NOTHING) {
            angles.add(String.format(Locale.ROOT, "blade tilted %.1f\u00b0", tilt));
        }
        return angles.isEmpty() ? "square within a twentieth of a degree" : String.join(", ", angles);
    }

    /** Which corner of the end stands out most. */
    private static String longPoint(String end, EndCut cut, boolean far) {
        List<String> where = new ArrayList<>();
        if (Math.abs(cut.mitreDegrees()) >= NOTHING) {
            where.add(cut.overWidth() > 0 == far ? "back edge" : "face edge");
        }
        if (Math.abs(cut.tiltDegrees()) >= NOTHING) {
            where.add(cut.overThickness() > 0 == far ? "back side" : "face side");
        }
        return where.isEmpty()
                ? "It looks square"
                : "The long point of the %s is at its %s".formatted(end, String.join(" and its ", where));
    }
}
