package scantling.construct;

import java.util.List;
import scantling.measure.Dim;
import scantling.space.Box;

/**
 * Air with a size that something must fit.
 *
 * @param path its name: {@code drawer 2 / opening}
 * @param width named {@code path / width}
 * @param depth named {@code path / depth}
 * @param height named {@code path / height}
 * @param box where it is
 * @param fills paths of the parts that must fit it
 */
public record Opening(String path, Dim width, Dim depth, Dim height, Box box, List<String> fills) {}
