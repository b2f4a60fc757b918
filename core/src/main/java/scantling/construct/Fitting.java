package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.measure.Dim;

/**
 * Hardware.
 *
 * @param path its name: {@code drawer 2 / slides}
 * @param what what it is in trade words: concealed undermount slide 350
 * @param count how many to buy for this place (a pair of slides is one pair)
 * @param per what one is: pair, piece, set
 * @param on paths of the parts it is fixed to
 * @param sizes what it needs, each named
 */
public record Fitting(String path, String what, int count, String per, List<String> on, Map<String, Dim> sizes) {}
