package scantling.space;

import scantling.measure.Dim;

/**
 * A part turned out of its box: splayed, raked, run round a corner. The box says where it would be before turning.
 *
 * @param about the direction of the line it turns about
 * @param degrees how far; positive turns ACROSS toward DEEP, DEEP toward UP, UP toward ACROSS
 * @param first where the line crosses the next direction (in the cycle ACROSS, DEEP, UP) behind {@code about}
 * @param second where it crosses the one behind that
 */
public record Turn(Axis about, double degrees, Dim first, Dim second) {}
