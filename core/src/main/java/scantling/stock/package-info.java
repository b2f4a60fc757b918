/**
 * What a workshop buys, keeps and has left: boards, sheets, sticks, offcuts, the rack they lie in, and the trade's rules
 * for measuring them (rough classes, board feet, grades, sheet sizes, saw kerfs, milling allowances). All of it is plain
 * values; tables come with their sources. Nothing here knows about parts or how they are cut from the stock; it may use
 * measures, spaces and timber only.
 */
@NullMarked
package scantling.stock;

import org.jspecify.annotations.NullMarked;
