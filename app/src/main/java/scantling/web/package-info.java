/**
 * The live packet: pages for the desk, cards for the bench, and the doors that keep everyone else out. Pages are worked
 * out afresh from what {@link scantling.shop} keeps and what {@link scantling.plan.Planner} makes of it; they hold nothing
 * that a restart could lose. Nothing below may know of it, and it knows nothing of {@code cli}.
 */
@NullMarked
package scantling.web;

import org.jspecify.annotations.NullMarked;
