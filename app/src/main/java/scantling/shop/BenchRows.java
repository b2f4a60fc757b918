package scantling.shop;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import scantling.measure.Length;

/** Bench entries as rows and back: a kind, a subject, and the rest as a small JSON object. */
final class BenchRows {
    private static final ObjectMapper JSON = new ObjectMapper();

    private BenchRows() {}

    static Row row(long act, String job, BenchEntry entry) {
        return Row.empty()
                .with("act", act)
                .with("job", job)
                .with("kind", kind(entry))
                .with("subject", entry.subject())
                .with("body", body(entry).toString());
    }

    static String kind(BenchEntry entry) {
        if (entry instanceof BenchEntry.Sawn) {
            return "sawn";
        } else if (entry instanceof BenchEntry.Cut) {
            return "cut";
        } else if (entry instanceof BenchEntry.Done) {
            return "done";
        } else if (entry instanceof BenchEntry.Undone) {
            return "undone";
        } else if (entry instanceof BenchEntry.Measured) {
            return "measured";
        } else if (entry instanceof BenchEntry.Spoilt) {
            return "spoilt";
        }
        return entry instanceof BenchEntry.Note ? "note" : "minutes";
    }

    private static ObjectNode body(BenchEntry entry) {
        ObjectNode body = JSON.createObjectNode();
        if (entry instanceof BenchEntry.Sawn sawn) {
            sawn(body, sawn);
        } else if (entry instanceof BenchEntry.Cut cut) {
            new TreeMap<>(cut.sizes()).forEach((name, size) -> body.put(name, size.toString()));
        } else if (entry instanceof BenchEntry.Measured measured) {
            body.put("size", measured.size().toString());
        } else if (entry instanceof BenchEntry.Spoilt spoilt) {
            body.put("why", spoilt.why());
        } else if (entry instanceof BenchEntry.Note note) {
            body.put("text", note.text()).put("photo", note.photo().orElse(""));
        } else if (entry instanceof BenchEntry.Minutes minutes) {
            body.put("minutes", minutes.minutes());
        }
        return body;
    }

    private static void sawn(ObjectNode body, BenchEntry.Sawn sawn) {
        ArrayNode parts = body.putArray("parts");
        for (BenchEntry.SawnPart part : sawn.parts()) {
            parts.addObject()
                    .put("part", part.part())
                    .put("length", part.length().toString())
                    .put("width", part.width().toString())
                    .put("pieces", part.pieces());
        }
        ArrayNode offcuts = body.putArray("offcuts");
        sawn.offcuts().forEach(offcut -> offcuts.add(RackRows.row(offcut, 0).json()));
    }

    /** @throws IllegalArgumentException for a row that is no entry */
    static BenchEntry entry(Row row) {
        String subject = row.text("subject");
        JsonNode body = tree(row.text("body"));
        return switch (row.text("kind")) {
            case "sawn" -> new BenchEntry.Sawn(row.said("subject"), parts(body), offcuts(body));
            case "cut" -> new BenchEntry.Cut(subject, sizes(body));
            case "done" -> new BenchEntry.Done(subject);
            case "undone" -> new BenchEntry.Undone(subject);
            case "measured" -> new BenchEntry.Measured(subject, Words.length(text(body, "size")));
            case "spoilt" -> new BenchEntry.Spoilt(subject, text(body, "why"));
            case "note" ->
                new BenchEntry.Note(
                        subject,
                        text(body, "text"),
                        Optional.of(text(body, "photo")).filter(photo -> !photo.isEmpty()));
            case "minutes" -> new BenchEntry.Minutes(subject, number(body, "minutes"));
            default -> throw new IllegalArgumentException("The bench knows nothing (%s).".formatted(row.text("kind")));
        };
    }

    private static JsonNode tree(String body) {
        try {
            return JSON.readTree(body);
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException("This is no bench entry: (%s).".formatted(body), unreadable);
        }
    }

    private static List<BenchEntry.SawnPart> parts(JsonNode body) {
        List<BenchEntry.SawnPart> parts = new ArrayList<>();
        for (JsonNode part : body.path("parts")) {
            parts.add(new BenchEntry.SawnPart(
                    text(part, "part"),
                    Words.length(text(part, "length")),
                    Words.length(text(part, "width")),
                    number(part, "pieces")));
        }
        return parts;
    }

    private static List<OnHand> offcuts(JsonNode body) {
        List<OnHand> offcuts = new ArrayList<>();
        for (JsonNode offcut : body.path("offcuts")) {
            offcuts.add(RackRows.onHand(Row.ofJson(offcut.asText())));
        }
        return offcuts;
    }

    private static Map<String, Length> sizes(JsonNode body) {
        Map<String, Length> sizes = new TreeMap<>();
        for (Map.Entry<String, JsonNode> size : body.properties()) {
            sizes.put(size.getKey(), Words.length(size.getValue().asText()));
        }
        return sizes;
    }

    private static String text(JsonNode node, String key) {
        return node.path(key).asText("");
    }

    private static int number(JsonNode node, String key) {
        JsonNode number = node.path(key);
        if (!number.isInt() || number.intValue() < 0) {
            throw new IllegalArgumentException(
                    "A bench entry needs a whole number for (%s), not (%s).".formatted(key, number));
        }
        return number.intValue();
    }
}
