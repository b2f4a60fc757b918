package scantling.shop;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.cutting.CutPart;
import scantling.cutting.CutPiece;
import scantling.cutting.Rest;
import scantling.measure.Length;
import scantling.milling.Blank;
import scantling.plan.CutGroup;
import scantling.stock.Rack;
import scantling.stock.Stock;

/**
 * The bench entry for a piece of stock that is only partly sawn: the parts cut free so far are sawn, and every piece in hand
 * lies in the rack at its size, so that the rest is planned anew from what there is. A card carries it for every number of
 * cuts, because it may be asked for without a network.
 */
public final class SawnSoFar {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LONGEST = 400_000;

    private SawnSoFar() {}

    /** What lies there after each number of cuts, as a page keeps it. */
    public static String written(CutPiece piece, CutGroup group, List<Blank> blanks, Rack rack, String job) {
        Stock stock = SawnAsPlanned.stock(piece, group, blanks, rack, job);
        ObjectNode all = JSON.createObjectNode();
        all.put("stock", rack.find(stock.id()).isPresent() ? stock.id() : "").put("named", stock.id());
        ArrayNode after = all.putArray("after");
        ObjectNode pieces = all.putObject("pieces");
        for (int made = 1; made <= piece.steps().size(); made++) {
            ArrayNode labels = after.addArray();
            for (Rest.OnBench there : Rest.onBench(group.job(), piece, made)) {
                if (there.part().isPresent() || there.keep()) {
                    labels.add(there.label());
                    pieces.set(there.label(), piece(there, stock, piece));
                }
            }
        }
        return all.toString();
    }

    private static ObjectNode piece(Rest.OnBench there, Stock stock, CutPiece from) {
        ObjectNode piece = JSON.createObjectNode();
        if (there.part().isPresent()) {
            CutPart part = there.part().get();
            Length width = part.width().isZero() ? stock.width() : part.width();
            return piece.put("part", part.name())
                    .put("length", part.length().toString())
                    .put("width", width.toString());
        }
        OnHand left = OnHand.of(SawnAsPlanned.rest(stock, from.stock(), there.place(), "x"));
        return piece.put("left", RackRows.row(left, 0).json());
    }

    /**
     * The entry after so many cuts; empty for what {@link #written} did not write, and while nothing is cut off.
     *
     * @param spoilt names of parts cut free that cannot be used, one for each piece
     * @param rack whose names are taken
     */
    public static Optional<BenchEntry.Sawn> read(String written, int made, List<String> spoilt, Rack rack) {
        if (written.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            JsonNode all = JSON.readTree(written);
            JsonNode labels = all.path("after").path(made - 1);
            return labels.isEmpty() ? Optional.empty() : Optional.of(entry(all, labels, spoilt, rack));
        } catch (JsonProcessingException | IllegalArgumentException noEntry) {
            return Optional.empty();
        }
    }

    private static BenchEntry.Sawn entry(JsonNode all, JsonNode labels, List<String> spoilt, Rack rack) {
        List<String> out = new ArrayList<>(spoilt);
        Map<BenchEntry.SawnPart, Integer> parts = new LinkedHashMap<>();
        List<OnHand> left = new ArrayList<>();
        for (JsonNode label : labels) {
            JsonNode piece = all.path("pieces").path(label.asText());
            if (piece.has("left")) {
                String id = SawnAsPlanned.name(all.path("named").asText(), left.size() + 1, rack);
                left.add(RackRows.onHand(Row.ofJson(piece.path("left").asText()).with("id", id)));
            } else if (!out.remove(piece.path("part").asText())) {
                parts.merge(part(piece), 1, Integer::sum);
            }
        }
        if (!out.isEmpty()) {
            throw new IllegalArgumentException("(%s) is not cut free.".formatted(out));
        }
        return new BenchEntry.Sawn(
                Optional.of(all.path("stock").asText()).filter(id -> !id.isEmpty()),
                parts.entrySet().stream()
                        .map(one -> new BenchEntry.SawnPart(
                                one.getKey().part(),
                                one.getKey().length(),
                                one.getKey().width(),
                                one.getValue()))
                        .toList(),
                left);
    }

    private static BenchEntry.SawnPart part(JsonNode piece) {
        return new BenchEntry.SawnPart(
                piece.path("part").asText(),
                Words.length(piece.path("length").asText()),
                Words.length(piece.path("width").asText()),
                1);
    }
}
