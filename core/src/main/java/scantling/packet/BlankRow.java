package scantling.packet;

import scantling.measure.Dim;

/**
 * Rough wood to be got out for one mark.
 *
 * @param mark of the parts it becomes
 * @param count how many
 * @param length rough
 * @param width rough
 * @param thickness rough
 * @param kind what it is: rough board, glue-up of three, sheet
 * @param how how it is got to size
 */
public record BlankRow(String mark, int count, Dim length, Dim width, Dim thickness, String kind, String how) {}
