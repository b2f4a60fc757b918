/** Measurements: JMH for single steps, main programs for the published instance sets. Nothing here is a test. */
@NullMarked
package scantling.bench;

import org.jspecify.annotations.NullMarked;
