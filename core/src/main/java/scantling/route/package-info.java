/**
 * What the maker does, in order: operations worked out from the parts, blanks, joints, features, openings and fittings of a
 * piece, each with its parts, settings, supplies, minutes, pause and cautions. Reads everything below; may use milling, cutting,
 * finishing and checks, not plan. Knows nothing of dates, which are the work of {@code route.schedule}.
 */
@NullMarked
package scantling.route;

import org.jspecify.annotations.NullMarked;
