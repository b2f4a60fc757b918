package scantling.construct;

import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.space.Box;

/**
 * Two parts meeting.
 *
 * @param path its name: {@code left end / top rail to front stile}
 * @param kind how they are joined
 * @param entering path of the part that enters, or lies against, the other
 * @param receiving path of the part that receives it
 * @param overlap the wood of one inside the box of the other, when there is any
 * @param sizes what it needs, each named: depth, width, thickness
 */
public record Joint(
        String path, Kind kind, String entering, String receiving, Optional<Box> overlap, Map<String, Dim> sizes) {
    /** How two parts are joined. */
    public enum Kind {
        /** Tenon of the entering part in a mortise. */
        MORTISE_AND_TENON("mortise and tenon"),
        /** A loose tenon in a mortise of each. */
        LOOSE_TENON("loose tenon"),
        /** Dowels in both. */
        DOWEL("dowel"),
        /** Biscuits in slots of both. */
        BISCUIT("biscuit"),
        /** End or edge let into a channel across the grain. */
        DADO("dado"),
        /** Edge let into a channel along the grain. */
        GROOVE("groove"),
        /** Laid into a step along an edge. */
        RABBET("rabbet"),
        /** Mitred and glued. */
        MITRE("mitre"),
        /** Glued edge to face or edge to edge. */
        GLUED("glued edge"),
        /** Butted and screwed. */
        SCREW("butt and screw"),
        /** Carried loose: on pins, on a slide, on hinges. */
        CARRIED("carried"),
        /** Tongue in a groove. */
        TONGUE("tongue and groove"),
        /** Tenon with a short step beside it that fills the end of the stile. */
        HAUNCHED("haunched mortise and tenon"),
        /** Channel across the grain that stops short of the edge that shows. */
        STOPPED_DADO("stopped dado"),
        /** Half of each taken away where they cross. */
        HALF_LAP("half-lap"),
        /** Open mortise and tenon through the whole width. */
        BRIDLE("bridle"),
        /** Straight fingers. */
        BOX_JOINT("box joint"),
        /** Tails and pins that go through. */
        DOVETAIL("dovetail"),
        /** Tails that stop within the front. */
        HALF_BLIND("half-blind dovetail"),
        /** Mitred, with biscuits across. */
        MITRE_BISCUIT("mitre with biscuit"),
        /** Mitred, with a spline across. */
        MITRE_SPLINE("mitre with spline"),
        /** Screws at a slant out of pockets. */
        POCKET_SCREW("pocket screw"),
        /** Whatever suits, as the rules of joinery say. */
        AUTO("auto");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Whether its ends are cut slanting to the corner. */
        public boolean isMitred() {
            return this == MITRE || this == MITRE_BISCUIT || this == MITRE_SPLINE;
        }

        /** Whether screws alone hold it: it needs no clamps and can be taken apart. */
        public boolean isScrewed() {
            return this == SCREW || this == POCKET_SCREW;
        }

        /** The trade's words for it. */
        public String words() {
            return words;
        }
    }
}
