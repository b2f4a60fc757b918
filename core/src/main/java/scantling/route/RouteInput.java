package scantling.route;

import java.util.List;
import scantling.construct.Assembly;
import scantling.feature.Features;
import scantling.finishing.FinishPlan;
import scantling.route.glue.Glue;

/**
 * What a route is worked out from.
 *
 * @param assembly the piece
 * @param features what is cut into its parts; where it knows of nothing, joints are told by their kinds
 * @param groups what is sawn from what
 * @param finish what goes on the wood
 * @param glue the shop's glue
 */
public record RouteInput(Assembly assembly, Features features, List<SawGroup> groups, FinishPlan finish, Glue glue) {
    /** Takes its own copy. */
    public RouteInput {
        groups = List.copyOf(groups);
    }
}
