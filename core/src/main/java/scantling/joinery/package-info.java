/**
 * How two parts are joined: which size of joint suits their wood, where it goes, and how the machine stands for it. Turns
 * every joint of an assembly into features on both parts, measured from their marks, with the reason for each choice. Knows
 * parts, lengths and rules from its data files; knows nothing of hardware, saws or paper.
 */
@NullMarked
package scantling.joinery;

import org.jspecify.annotations.NullMarked;
