/**
 * What each part is milled from: rough sizes, strips to glue up, layers to laminate, the two stages of milling. It reads
 * assemblies and the stated allowances of the shop; it may use construct and all below. It knows nothing of which board
 * or sheet a blank comes from.
 */
@NullMarked
package scantling.milling;

import org.jspecify.annotations.NullMarked;
