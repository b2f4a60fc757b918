/**
 * In which order parts are glued: which sub-assemblies, which way each joint closes, how many clamps, and whether the glue
 * stays open long enough. Reads the parts and joints of an assembly and the tables of glues and joints; may use construct and
 * all below. Knows nothing of hours and days, and its answer is replayed part by part by a check that shares none of its search.
 */
@NullMarked
package scantling.route.glue;

import org.jspecify.annotations.NullMarked;
