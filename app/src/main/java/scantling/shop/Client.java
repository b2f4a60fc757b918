package scantling.shop;

/**
 * For whom jobs are done.
 *
 * @param id short and fixed; empty for one that the shop is to name
 * @param name as the maker says it
 * @param contact how to reach them; may be empty
 * @param note may be empty
 */
public record Client(String id, String name, String contact, String note) {}
