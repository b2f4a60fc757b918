package scantling.shop;

import java.time.Instant;

/**
 * An act as the journal holds it.
 *
 * @param seq its place in the journal, from 1
 * @param id as it was sent
 * @param device who sent it
 * @param at when it was taken
 * @param words what it did, for people
 * @param job which job it concerns; empty for none
 * @param subject what it made or changed: the id of a job, a client, a piece of stock
 * @param undone whether it has been taken back
 */
public record Recorded(
        long seq, String id, String device, Instant at, String words, String job, String subject, boolean undone) {}
