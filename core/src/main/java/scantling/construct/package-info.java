/**
 * Elements that turn a space into parts, joints, openings and fittings, all placed, all sizes Dims with names. An
 * element is one class; adding one changes nothing above this package. It reads pieces and asks timber and stock for
 * facts; it knows nothing of machines, saw plans or paper.
 */
@NullMarked
package scantling.construct;

import org.jspecify.annotations.NullMarked;
