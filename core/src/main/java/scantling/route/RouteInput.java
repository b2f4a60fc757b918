package scantling.route;

import java.util.List;
import scantling.construct.Assembly;
import scantling.feature.Features;
import scantling.route.glue.Glue;

/**
 * What a route is worked out from.
 *
 * @param assembly the piece
 * @param features what is cut into its parts; where it knows of nothing, joints are told by their kinds
 * @param groups what is sawn from what
 * @param coats finishing, step by step
 * @param glue the shop's glue
 */
public record RouteInput(Assembly assembly, Features features, List<SawGroup> groups, List<CoatStep> coats, Glue glue) {
    /** Takes its own copies. */
    public RouteInput {
        groups = List.copyOf(groups);
        coats = List.copyOf(coats);
    }
}
