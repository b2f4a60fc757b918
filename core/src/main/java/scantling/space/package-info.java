/**
 * Where things are: boxes of air and wood bounded by planes that are Dims, their sides, outlines and placement. Only
 * geometry lives here; it knows lengths and nothing of wood, parts or joints.
 */
@NullMarked
package scantling.space;

import org.jspecify.annotations.NullMarked;
