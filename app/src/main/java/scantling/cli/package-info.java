/** The command line: a thin shell over the library that reads files, calls the planner and writes what it gives. */
@NullMarked
package scantling.cli;

import org.jspecify.annotations.NullMarked;
