package scantling.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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

    static Route of(
            Assembly assembly,
            Features features,
            FinishPlan finish,
            List<Blank> blanks,
            List<CutGroup> cuts,
            Times times) {
        List<SawGroup> groups = new ArrayList<>();
        for (CutGroup cut : cuts) {
            Set<String> parts =
                    cut.job().parts().stream().map(part -> part.name()).collect(Collectors.toSet());
            List<Blank> sawn = blanks.stream()
                    .filter(blank -> parts.contains(blank.part()))
                    .toList();
            groups.add(
                    new SawGroup(cut.title(), cut.material(), cut.plan().used().size(), sawn));
        }
        RouteInput input = new RouteInput(assembly, features, groups, finish, Glue.usual());
        return Router.route(input, times);
    }
}
