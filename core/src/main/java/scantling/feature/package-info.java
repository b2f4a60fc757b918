/**
 * What is taken from a part, or left standing on it, dimensioned from the marks a bench puts on it. Joinery and hardware
 * make features, drawing and paper show them; both drive the wood screws whose holes stand here. Knows parts and lengths;
 * knows nothing of which joint or fitting asks for what.
 */
@NullMarked
package scantling.feature;

import org.jspecify.annotations.NullMarked;
