package scantling.shop;

/**
 * What an act came to, for the journal.
 *
 * @param kind short and fixed
 * @param words for people
 * @param job which job it concerns; empty for none
 * @param subject what it made or changed
 */
record Effect(String kind, String words, String job, String subject) {}
