package scantling.shop;

import java.time.Instant;

/**
 * A bench entry as the log holds it.
 *
 * @param seq its place in the log
 * @param act id of the act that brought it
 * @param device from where
 * @param at when
 * @param entry what happened
 * @param inForce whether its act has not been taken back
 */
public record Logged(long seq, String act, String device, Instant at, BenchEntry entry, boolean inForce) {}
