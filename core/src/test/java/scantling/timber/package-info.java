/** Checks of scantling.timber against published tables and hand arithmetic. */
@NullMarked
package scantling.timber;

import org.jspecify.annotations.NullMarked;
