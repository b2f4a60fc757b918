package scantling.route;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** What is done to one part, in order. @param part its path */
    public List<Operation> of(String part) {
        return operations.stream()
                .filter(operation -> operation.parts().contains(part))
                .toList();
    }

    /** What is done next to one part: the first of its operations that is not done. @param done ids of what is done */
    public Optional<Operation> next(String part, Set<String> done) {
        return of(part).stream()
                .filter(operation -> !done.contains(operation.id()))
                .findFirst();
    }

    /** What can be done now: everything not done whose beginnings are all done, in the order of the route. */
    public List<Operation> ready(Set<String> done) {
        return operations.stream()
                .filter(operation -> !done.contains(operation.id()) && done.containsAll(operation.after()))
                .toList();
    }

    /** An operation by its id. */
    public Optional<Operation> find(String id) {
        return operations.stream()
                .filter(operation -> operation.id().equals(id))
                .findFirst();
    }

    /** Hands-on minutes by class of operation, those that have any, each with marks of its own (docs/method/time.md). */
    public Map<Trade, Minutes> byTrade() {
        Map<Trade, List<Operation>> classes = new EnumMap<>(Trade.class);
        operations.forEach(operation -> classes.computeIfAbsent(operation.step().trade(), k -> new ArrayList<>())
                .add(operation));
        Map<Trade, Minutes> marks = new EnumMap<>(Trade.class);
        classes.forEach((trade, alike) -> marks.put(trade, Marks.of(alike)));
        return marks;
    }

    /** All hands-on minutes; the marks are added, as if all went well or all went badly. */
    public Minutes hands() {
        return operations.stream().map(Operation::hands).reduce(Minutes.NONE, Minutes::plus);
    }
}
