/**
 * What goes on the wood: which faces, which coats, in what order, how much of each, and what to beware of. Takes an
 * assembly and what its text says of the finish, gives a {@link scantling.finishing.FinishPlan}. Knows nothing of hours,
 * money or saw plans.
 */
@NullMarked
package scantling.finishing;

import org.jspecify.annotations.NullMarked;
