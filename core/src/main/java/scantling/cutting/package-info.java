/**
 * The saw plans: which pieces to take from which sheets, boards and sticks, and in what order a person cuts them. Lives
 * here: the job, the search, its lower bounds, the cut tree with its numbered steps, the independent check and the JSON
 * of both. It knows lengths only, not what a part is for; it touches no file, clock or screen, and gives the same plan for
 * the same job, seed and number of steps.
 */
@NullMarked
package scantling.cutting;

import org.jspecify.annotations.NullMarked;
