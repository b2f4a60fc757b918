package scantling.piece;

import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.measure.Span;

/** How far something leans off upright, as the maker said it. */
public sealed interface Lean {
    /** How far its foot stands out beyond its top, when it is that high. */
    Dim over(Dim height);

    /** Said as that distance. @param out at the foot */
    record Offset(Dim out) implements Lean {
        @Override
        public Dim over(Dim height) {
            return out;
        }
    }

    /** Said as an angle. @param degrees off upright @param text as typed @param span where */
    record Angle(double degrees, String text, Span span) implements Lean {
        /** Rise times tangent. */
        @Override
        public Dim over(Dim height) {
            double tangent = Math.tan(Math.toRadians(degrees));
            return Dim.worked(
                    Length.ofMillimetres(height.value().toMillimetres() * tangent),
                    "tangent of the %s given on %s times the height".formatted(text, span),
                    new Making.Input(tangent, height));
        }
    }
}
