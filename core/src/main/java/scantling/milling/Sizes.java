package scantling.milling;

import scantling.measure.Dim;

/** Three sizes of a piece of wood. @param length along the grain @param width across it @param thickness through it */
public record Sizes(Dim length, Dim width, Dim thickness) {}
