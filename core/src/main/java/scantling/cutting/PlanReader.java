package scantling.cutting;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import scantling.measure.Length;

/** Reads back a plan that {@link JsonWriter} wrote, for the check alone: the numbered cuts are worked out anew. */
final class PlanReader {
    /** A thousand kilometres, in millimetres: nothing that is sawn is longer, and sums of such lengths are lengths still. */
    private static final BigDecimal MOST = new BigDecimal(1_000_000_000);

    private final CutJob job;
    private final List<String> problems = new ArrayList<>();

    PlanReader(CutJob job) {
        this.job = job;
    }

    List<String> problems() {
        return List.copyOf(problems);
    }

    CutPlan read(JsonNode node) {
        List<CutPiece> used = new ArrayList<>();
        for (JsonNode piece : node.path("pieces")) {
            if (known(piece, "stock", job.stock().size())) {
                used.add(piece(piece));
            }
        }
        List<CutPlan.LeftOut> leftOut = new ArrayList<>();
        for (JsonNode out : node.path("leftOut")) {
            if (known(out, "part", job.parts().size())) {
                CutPart part = job.parts().get(out.path("part").asInt());
                leftOut.add(new CutPlan.LeftOut(
                        part, out.path("count").asInt(), out.path("reason").asText()));
            }
        }
        long cost = node.path("cost").asLong();
        long bound = node.path("lowerBound").asLong();
        return new CutPlan(status(node), cost, bound, used, leftOut);
    }

    private CutPlan.Status status(JsonNode node) {
        String name = node.path("status").asText().toUpperCase(Locale.ROOT);
        for (CutPlan.Status status : CutPlan.Status.values()) {
            if (status.name().equals(name)) {
                return status;
            }
        }
        problems.add("status: (%s) is not known.".formatted(name));
        return CutPlan.Status.SOUND;
    }

    private CutPiece piece(JsonNode node) {
        Stock stock = job.stock().get(node.path("stock").asInt());
        CutTree tree = tree(node.path("tree"));
        List<PlacedPart> parts = new ArrayList<>();
        for (JsonNode part : node.path("parts")) {
            if (known(part, "part", job.parts().size())) {
                parts.add(placed(part));
            }
        }
        return new CutPiece(stock, node.path("number").asInt(), tree, parts, Steps.of(job, stock, tree), List.of());
    }

    private CutTree tree(JsonNode node) {
        if (node.has("cut")) {
            CutDirection direction =
                    node.path("cut").asText().equals("along") ? CutDirection.ALONG : CutDirection.ACROSS;
            return new CutTree.Cut(
                    direction, length(node, "position"), tree(node.path("first")), tree(node.path("second")));
        }
        if (node.has("part") && known(node, "part", job.parts().size())) {
            return new CutTree.Part(placed(node));
        }
        if (node.has("keep")) {
            return new CutTree.Offcut(
                    length(node, "x"),
                    length(node, "y"),
                    length(node, "length"),
                    length(node, "width"),
                    node.path("keep").asBoolean());
        }
        return new CutTree.Nothing();
    }

    private PlacedPart placed(JsonNode node) {
        return new PlacedPart(
                job.parts().get(node.path("part").asInt()),
                node.path("copy").asInt(),
                length(node, "x"),
                length(node, "y"),
                length(node, "length"),
                length(node, "width"),
                node.path("turned").asBoolean());
    }

    private boolean known(JsonNode node, String field, int size) {
        JsonNode index = node.path(field);
        boolean known = index.isInt() && index.intValue() >= 0 && index.intValue() < size;
        if (!known) {
            problems.add("%s: (%s) is not in the job.".formatted(field, index));
        }
        return known;
    }

    private Length length(JsonNode node, String field) {
        BigDecimal said = node.path(field).decimalValue();
        if (said.abs().compareTo(MOST) > 0) {
            problems.add("%s: (%s) is no length that a piece of stock has.".formatted(field, node.path(field)));
            return Length.ZERO;
        }
        return Length.ofMillimetres(said);
    }
}
