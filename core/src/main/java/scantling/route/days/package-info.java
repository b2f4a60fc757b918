/**
 * Jobs on one calendar: working hours by the shop's clock, routes as networks of tasks, what is done already, the agenda with
 * its reasons, and the odds of its dates. The time it is comes in from outside. It may use routes and timetables; it knows
 * nothing of how either is made.
 */
@NullMarked
package scantling.route.days;

import org.jspecify.annotations.NullMarked;
