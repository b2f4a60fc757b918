package scantling.bench.trust;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import scantling.cutting.CutJob;
import scantling.cutting.CutJson;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;

/**
 * Saw plans as text: real ones of small jobs (sheets, boards with defects, sticks, matched parts, parts left out), as they are
 * or with a few values changed, lost, doubled or exchanged.
 */
final class SawPlanTexts {
    private static final int REAL = 20;
    private static final int STEPS = 40;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Hand hand;
    private final List<String> real = new ArrayList<>();

    SawPlanTexts(Hand hand) {
        this.hand = hand;
        while (real.size() < REAL) {
            CutJob job = CutJson.readJob(job()).job().orElseThrow();
            real.add(CutJson.writePlan(job, SawPlans.plan(job, new Effort(STEPS, 1), () -> false), 0));
        }
    }

    /** One plan, sound one time in four. */
    String one() {
        String text = hand.of(real);
        return switch (hand.below(4)) {
            case 0 -> text;
            case 1 -> hand.damaged(text, List.of("0", "-1", "{}", "null", "\"across\"", ","));
            default -> changed(text);
        };
    }

    private String job() {
        String kind = hand.of(List.of("sheets", "boards", "sticks"));
        boolean sticks = kind.equals("sticks");
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            String match = sticks || i > 1 ? "" : hand.of(List.of("", ",\"row\":\"r\"", ",\"beside\":\"b\""));
            parts.add("{\"name\":\"p%d\",\"length\":%d%s,\"count\":%d%s}"
                    .formatted(
                            i,
                            200 + hand.below(900),
                            sticks ? "" : ",\"width\":" + (30 + hand.below(250)),
                            match.isEmpty() ? 1 + hand.below(3) : 1,
                            match));
        }
        String size = sticks ? "\"length\":2400" : "\"length\":1220,\"width\":%d".formatted(200 + hand.below(400));
        String defects =
                kind.equals("boards") ? ",\"defects\":[\"300 to 340\",\"500 to 900, 20 off the far edge\"]" : "";
        return "{\"saw\":{\"kerf\":3,\"trim\":%d,\"stages\":%d},\"%s\":[{\"name\":\"s\",%s,\"cost\":5%s}],\"parts\":[%s]}"
                .formatted(hand.below(2) * 5, hand.of(List.of(0, 2, 3)), kind, size, defects, String.join(",", parts));
    }

    private String changed(String text) {
        try {
            JsonNode tree = MAPPER.readTree(text);
            for (int i = 0; i <= hand.below(2); i++) {
                change(tree);
            }
            return tree.toString();
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("A plan was written that is no JSON.", broken);
        }
    }

    /** Goes down to some place, at each step to any value there, and changes what it finds. */
    private void change(JsonNode tree) {
        JsonNode at = tree;
        while (at.size() > 0) {
            int which = hand.below(at.size());
            JsonNode below = at.isArray() ? at.path(which) : at.path(name(at, which));
            if (below.size() == 0 || hand.oneIn(8)) {
                change(at, which, below);
                return;
            }
            at = below;
        }
    }

    private static String name(JsonNode node, int which) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names.get(which);
    }

    private void change(JsonNode at, int which, JsonNode below) {
        boolean lost = hand.oneIn(4);
        if (at instanceof ArrayNode list) {
            if (lost) {
                list.remove(which);
            } else if (hand.oneIn(2)) {
                list.add(below.deepCopy());
            } else {
                list.set(which, other(below));
            }
        } else if (at instanceof ObjectNode fields) {
            String name = name(at, which);
            if (lost) {
                fields.remove(name);
            } else {
                fields.set(name, other(below));
            }
        }
    }

    private JsonNode other(JsonNode value) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        BigDecimal number = value.isNumber() ? value.decimalValue() : BigDecimal.ONE;
        return hand.<JsonNode>one(
                () -> make.numberNode(number.add(BigDecimal.ONE)),
                () -> make.numberNode(number.negate()),
                () -> make.numberNode(number.scaleByPowerOfTen(hand.below(60))),
                () -> make.numberNode(new BigDecimal("0.00000001")),
                () -> make.textNode(number.toPlainString()),
                () -> make.textNode(hand.of(List.of("along", "across", "sound", "optimal", "", "x"))),
                make::nullNode,
                () -> make.booleanNode(hand.oneIn(2)),
                make::objectNode,
                make::arrayNode);
    }
}
