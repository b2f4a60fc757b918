/**
 * Exact lengths, and numbers that know where they came from. A {@link scantling.measure.Length} is a whole number of
 * tenths of a nanometre; a {@link scantling.measure.Dim} is a length together with the short sum that made it. Nothing
 * here knows about wood, parts or files; every other package may use it, and it uses none.
 */
@NullMarked
package scantling.measure;

import org.jspecify.annotations.NullMarked;
