package scantling.route;

import java.util.List;
import scantling.route.glue.GlueOrder;

/**
 * Everything a maker does to a piece, in an order in which it can be done.
 *
 * @param operations each behind those it waits for
 * @param order how the piece is put together
 */
public record Route(List<Operation> operations, GlueOrder order) {
    /** Nothing to do. */
    public static final Route NONE = new Route(List.of(), GlueOrder.NONE);

    /** Takes its own copy. */
    public Route {
        operations = List.copyOf(operations);
    }

    /** The same with other times: those that a log has taught. */
    public Route timed(Times times) {
        return new Route(
                operations.stream().map(operation -> operation.timed(times)).toList(), order);
    }

    /** All hands-on minutes; the marks are added, as if all went well or all went badly. */
    public Minutes hands() {
        return operations.stream().map(Operation::hands).reduce(Minutes.NONE, Minutes::plus);
    }
}
