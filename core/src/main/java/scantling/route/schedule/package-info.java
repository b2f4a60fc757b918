/**
 * When things are done: tasks that take hands, waits that take none, what there is only so much of, working hours. A
 * first timetable at once, better ones by a constraint solver, each judged anew by an independent check. Knows tasks and
 * ticks; knows nothing of wood, and may not ask what time it is.
 */
@NullMarked
package scantling.route.schedule;

import org.jspecify.annotations.NullMarked;
