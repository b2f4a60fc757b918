/** Checks of scantling.stock against published tables and hand arithmetic. */
@NullMarked
package scantling.stock;

import org.jspecify.annotations.NullMarked;
