package scantling.shop;

import java.time.Instant;

/**
 * A text of a piece as it once was or is.
 *
 * @param job whose
 * @param number counted from 1 in each job; never given twice
 * @param text every character of it
 * @param at when it came
 * @param device from where
 * @param words what was changed, for people
 */
public record Revision(String job, int number, String text, Instant at, String device, String words) {}
