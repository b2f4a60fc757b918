/**
 * Everything derived, once, in order: from a piece, the bench and the shop to one immutable {@link scantling.plan.Plan}.
 * The planner calls the rooms below it and adds nothing of its own but the grouping of blanks into what one saw plan cuts.
 */
@NullMarked
package scantling.plan;

import org.jspecify.annotations.NullMarked;
