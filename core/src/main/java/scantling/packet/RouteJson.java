package scantling.packet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import scantling.route.Minutes;
import scantling.route.Needs;
import scantling.route.Operation;
import scantling.route.Pause;
import scantling.route.Route;

/** The route as JSON: every operation with what it is done to, how long it takes and what must be done first. */
final class RouteJson {
    private static final double HUNDREDTHS = 100;

    private RouteJson() {}

    static void write(ObjectNode root, Route route) {
        ArrayNode all = root.putArray("operations");
        route.operations().forEach(operation -> operation(all.addObject(), operation));
    }

    private static void operation(ObjectNode node, Operation operation) {
        node.put("id", operation.id()).put("step", operation.step().words());
        node.put("class", operation.step().trade().words()).put("title", operation.title());
        texts(node, "parts", operation.parts());
        texts(node, "after", operation.after());
        texts(node, "settings", operation.settings());
        ArrayNode supplies = node.putArray("supplies");
        operation
                .supplies()
                .forEach(supply -> supplies.addObject()
                        .put("name", supply.name())
                        .put("amount", rounded(supply.amount()))
                        .put("unit", supply.unit())
                        .put("source", supply.source()));
        node.put("work", operation.work()).put("amount", rounded(operation.amount()));
        Minutes hands = operation.hands();
        node.putObject("minutes")
                .put("low", rounded(hands.low()))
                .put("likely", rounded(hands.likely()))
                .put("high", rounded(hands.high()))
                .put("observations", operation.observations());
        pause(node, operation.pause());
        needs(node.putObject("needs"), operation.needs());
        ArrayNode cautions = node.putArray("cautions");
        operation
                .cautions()
                .forEach(caution ->
                        cautions.addObject().put("sentence", caution.sentence()).put("source", caution.source()));
    }

    private static void pause(ObjectNode node, Pause pause) {
        if (pause.hours() > 0 || pause.closes().isPresent()) {
            ObjectNode then = node.putObject("then").put("hours", rounded(pause.hours()));
            pause.closes().ifPresent(closes -> then.put("closes", rounded(closes)));
            then.put("why", pause.why()).put("source", pause.source());
        }
    }

    private static void needs(ObjectNode node, Needs needs) {
        node.put("bench", needs.bench()).put("clamps", needs.clamps());
        node.put("clampLength", needs.clampLength().millimetres());
        node.put("spray", needs.spray()).put("drying", needs.drying());
        node.put("dryingRoom", rounded(needs.dryingRoom()));
        node.put("heldHours", rounded(needs.holdHours()));
    }

    private static double rounded(double value) {
        return Math.rint(value * HUNDREDTHS) / HUNDREDTHS;
    }

    private static void texts(ObjectNode node, String key, List<String> texts) {
        ArrayNode array = node.putArray(key);
        texts.forEach(array::add);
    }
}
