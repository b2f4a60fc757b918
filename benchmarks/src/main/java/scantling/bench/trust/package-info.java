/**
 * What shows that nothing is lost, nobody comes in and everything stays quick: fuzzing, crashes, load, licences. Each class
 * with a main method is a command, written down with its results in docs/trust.md. Nothing here is used by the program.
 */
@NullMarked
package scantling.bench.trust;

import org.jspecify.annotations.NullMarked;
