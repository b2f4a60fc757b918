/**
 * The description of a piece: what the maker wrote, read and checked, with every problem placed in the text. What
 * elements there are is told from above by a {@link scantling.piece.Language}; this package knows how to read them, not
 * how to build them.
 */
@NullMarked
package scantling.piece;

import org.jspecify.annotations.NullMarked;
