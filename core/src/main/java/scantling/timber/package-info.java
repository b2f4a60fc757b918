/**
 * What wood and sheet goods are like: species, panels, moisture, movement, density, strength. Numbers live in tables on
 * the class path, each row with its source; what a table does not know is answered by nothing, and what a formula cannot
 * answer by a {@link scantling.timber.Estimate.Refused} with its reason. Nothing here knows about parts, pieces or what
 * is on the rack; it may use measures and spaces only.
 */
@NullMarked
package scantling.timber;

import org.jspecify.annotations.NullMarked;
