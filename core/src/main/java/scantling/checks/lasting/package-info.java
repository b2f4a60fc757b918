/**
 * Whether a piece will last: how far shelves sag, how wood moves through the year, whether it tips. It reads assemblies
 * and gives findings with their numbers and sources; every table stands in the data files of checks. It may use
 * construct and all below, and knows nothing of saw plans, route or price.
 */
@NullMarked
package scantling.checks.lasting;

import org.jspecify.annotations.NullMarked;
