package scantling.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import scantling.construct.Assembly;
import scantling.feature.Features;
import scantling.finishing.FinishPlan;
import scantling.milling.Blank;
import scantling.route.Route;
import scantling.route.RouteInput;
import scantling.route.Router;
import scantling.route.SawGroup;
import scantling.route.Times;
import scantling.route.glue.Glue;

/** Brings what is planned to the room that works out the route. */
final class Routes {
    private Routes() {}

    /**
     * The whole route, what is done among it: which operations are done is for the bench to say, and a route that shrank
     * with the work would lose the ones that are half done.
     *
     * @param titled all blanks, by the title of what they are sawn from
     */
    static Route of(
            Assembly assembly,
            Features features,
            FinishPlan finish,
            Map<String, List<Blank>> titled,
            List<CutGroup> cuts,
            Times times) {
        List<SawGroup> groups = new ArrayList<>();
        titled.forEach((title, blanks) ->
                groups.add(new SawGroup(title, blanks.get(0).material(), opened(title, cuts), blanks)));
        RouteInput input = new RouteInput(assembly, features, groups, finish, Glue.usual());
        return Router.route(input, times);
    }

    /** How many pieces of stock are still to be opened; one where all of it is sawn already. */
    private static int opened(String title, List<CutGroup> cuts) {
        return cuts.stream()
                .filter(cut -> cut.title().equals(title))
                .mapToInt(cut -> cut.plan().used().size())
                .findFirst()
                .orElse(1);
    }
}
