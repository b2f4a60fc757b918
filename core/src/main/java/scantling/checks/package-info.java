/**
 * What a careful master would say on looking at the plan: whether it can be put together at all, whether what is cut
 * fits, what to measure first. It reads assemblies and gives findings; it may use construct and all below, and never
 * trusts how an element came to its planes.
 */
@NullMarked
package scantling.checks;

import org.jspecify.annotations.NullMarked;
