/**
 * The piece as a frame in space: parts as bars, sheets that brace it, joints that give, loads of furniture tests; how far
 * it moves and which joint is nearest to its limit. It reads assemblies and the tables of checks and timber, and gives
 * results and findings. It may use construct and all below, and trusts no element's word on how parts hold each other.
 */
@NullMarked
package scantling.checks.frame;

import org.jspecify.annotations.NullMarked;
