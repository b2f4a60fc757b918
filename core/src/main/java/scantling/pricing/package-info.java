/**
 * Money: what a piece costs to make, with its odds, what to ask for it, and what a job taught. Takes what other rooms
 * worked out (saw plans, finish, hours by class) and a shop's {@link scantling.pricing.Rates}. Knows nothing of routes or
 * dates: hours come in as {@link scantling.pricing.Work}.
 */
@NullMarked
package scantling.pricing;

import org.jspecify.annotations.NullMarked;
