package scantling.route;

import scantling.route.glue.GlueOrder;

/** Works out the route of a piece: nothing in it is typed by the maker. */
public final class Router {
    private Router() {}

    /** The route of a piece, each operation behind those it waits for. */
    public static Route route(RouteInput input, Times times) {
        GlueOrder order = GlueOrder.of(input.assembly(), input.glue());
        Draft draft = new Draft(times);
        new MillingSteps(draft, input.glue()).write(input.groups());
        new JointSteps(draft, input).write();
        new AssemblySteps(draft, input, order).write();
        new LastSteps(draft, input, order).write();
        return new Route(draft.operations(), order);
    }
}
