package scantling.piece;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** The JSON Schema (draft 2020-12) of a description, made from the language, so that editors complete and check it. */
public final class PieceSchema {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Language language;

    private PieceSchema(Language language) {
        this.language = language;
    }

    /** The schema as text, indented. */
    public static String json(Language language) {
        return new PieceSchema(language).document().toPrettyString() + "\n";
    }

    private ObjectNode document() {
        ObjectNode schema = JSON.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "A piece");
        ObjectNode keys = JSON.objectNode();
        PieceReader.KEYS.forEach((key, says) -> keys.set(key, described(top(key), says)));
        object(schema, keys, List.of("piece", "size", "build"));
        ObjectNode definitions = schema.putObject("$defs");
        definitions.set("length", described(type("number", "string"), "A length or a sum of lengths."));
        definitions.set(
                "stock", described(anyOf(type("string"), stock()), "A material, with a width where one is needed."));
        definitions.set("sides", described(anyOf(length(), sides()), "A length for all sides, or by side."));
        definitions.set(
                "leans", described(anyOf(length(), sides()), "A length or an angle, for all sides or by side."));
        definitions.set("corners", corners());
        definitions.set("steps", steps());
        definitions.set("material", material());
        return schema;
    }

    private static ObjectNode top(String key) {
        return switch (key) {
            case "unit" -> words(PieceReader.UNITS);
            case "size" -> anyOf(type("string"), size());
            case "lengths", "sizes" -> mapOf(length());
            case "materials" -> mapOf(reference("material"));
            case "build" -> reference("steps");
            case "finish" -> finish();
            case "home" -> anyOf(type("string"), home());
            case "shop" -> home();
            case "moisture" -> anyOf(type("number", "string"), mapOf(type("number", "string")));
            case "matched" -> listOf(anyOf(type("string"), listOf(type("string")), beside()));
            case "accepted" -> mapOf(type("string", "number", "boolean"));
            default -> type("string", "number");
        };
    }

    private static ObjectNode beside() {
        ObjectNode keys = JSON.objectNode();
        ObjectNode line = anyOf(type("string"), listOf(type("string")));
        keys.set(MatchedReader.BESIDE, anyOf(type("string"), listOf(line)));
        return object(JSON.objectNode(), keys, List.of(MatchedReader.BESIDE));
    }

    /** Whatever is no key of its own is a step. */
    private static ObjectNode finish() {
        ObjectNode keys = JSON.objectNode();
        FinishReader.KEYS.forEach((key, says) -> keys.set(
                key,
                described(
                        switch (key) {
                            case "groups" -> mapOf(finishGroup());
                            case "coats" -> mapOf(mapOf(word()));
                            default -> word();
                        },
                        says)));
        return withSteps(keys);
    }

    private static ObjectNode finishGroup() {
        ObjectNode keys = JSON.objectNode();
        FinishReader.GROUP_KEYS.forEach((key, says) -> keys.set(
                key,
                described(
                        switch (key) {
                            case "on", "of", "faces" -> anyOf(word(), listOf(word()));
                            case "before assembly" -> flag();
                            default -> word();
                        },
                        says)));
        return withSteps(keys);
    }

    private static ObjectNode withSteps(ObjectNode keys) {
        ObjectNode node = type("object");
        node.set("properties", keys);
        node.set("additionalProperties", word());
        return node;
    }

    private static ObjectNode word() {
        return type("string", "number", "boolean");
    }

    private static ObjectNode size() {
        ObjectNode keys = JSON.objectNode();
        List.of("width", "depth", "height").forEach(key -> keys.set(key, length()));
        return object(JSON.objectNode(), keys, List.of("width", "depth", "height"));
    }

    private static ObjectNode home() {
        ObjectNode keys = JSON.objectNode();
        ConditionsReader.HOME_KEYS.forEach((key, says) ->
                keys.set(key, described(anyOf(type("number", "string"), listOf(type("number", "string"))), says)));
        return object(JSON.objectNode(), keys, List.copyOf(ConditionsReader.HOME_KEYS.keySet()));
    }

    private static ObjectNode stock() {
        ObjectNode keys = JSON.objectNode();
        keys.set("of", type("string"));
        keys.set("width", length());
        return object(JSON.objectNode(), keys, List.of("of"));
    }

    private static ObjectNode sides() {
        ObjectNode keys = JSON.objectNode();
        SidesReader.allowed().forEach(side -> keys.set(side, length()));
        return object(JSON.objectNode(), keys, List.of());
    }

    private static ObjectNode corners() {
        ObjectNode corner = listOf(length());
        corner.put("minItems", 2).put("maxItems", 2);
        ObjectNode corners = listOf(corner);
        corners.put("minItems", 3);
        return described(corners, "Corners, each [along, across].");
    }

    private static ObjectNode material() {
        ObjectNode keys = JSON.objectNode();
        MaterialsReader.KEYS.forEach((key, says) -> keys.set(
                key,
                described(
                        switch (key) {
                            case "thickness", "measured" -> length();
                            case "grain", "prefinished" -> flag();
                            case "sawn" -> words(ConditionsReader.SAWN);
                            case "price" -> type("number", "string");
                            case "sheets" -> listOf(supply(SupplyReader.SHEETS));
                            case "boards" -> listOf(supply(SupplyReader.BOARDS));
                            default -> type("string");
                        },
                        says)));
        return object(JSON.objectNode(), keys, List.of());
    }

    private static ObjectNode supply(Map<String, String> said) {
        ObjectNode keys = JSON.objectNode();
        said.forEach((key, says) -> keys.set(
                key,
                described(
                        switch (key) {
                            case "price" -> type("number", "string");
                            case "count" -> type("integer").put("minimum", 1);
                            case "trimmed" -> flag();
                            case "defects" -> anyOf(type("string"), listOf(type("string")));
                            default -> type("string");
                        },
                        says)));
        return object(JSON.objectNode(), keys, List.of("size"));
    }

    private ObjectNode steps() {
        ObjectNode elements = JSON.objectNode();
        language.elements().forEach(shape -> elements.set(shape.key(), shape(shape)));
        ObjectNode one = object(JSON.objectNode(), elements, List.of());
        one.put("minProperties", 1).put("maxProperties", 1);
        ObjectNode byWord = object(JSON.objectNode(), elements.deepCopy(), List.of());
        ObjectNode bare = words(language.elements().stream().map(Shape::key).toList());
        return described(anyOf(listOf(anyOf(one, bare)), byWord), "Elements, from the outside in.");
    }

    private ObjectNode shape(Shape shape) {
        ObjectNode fields = JSON.objectNode();
        fields.set("name", described(type("string", "number"), "A name of its own."));
        shape.fields().forEach(field -> fields.set(field.key(), field(field)));
        List<String> required =
                shape.fields().stream().filter(Field::required).map(Field::key).toList();
        ObjectNode whole = object(JSON.objectNode(), fields, required);
        ObjectNode any = anyOf(whole);
        ArrayNode choices = any.withArray("anyOf");
        shape.shortField()
                .flatMap(key -> shape.fields().stream()
                        .filter(field -> field.key().equals(key))
                        .findFirst())
                .ifPresent(field -> choices.add(kind(field)));
        if (required.isEmpty()) {
            choices.add(type("null"));
        }
        return described(choices.size() == 1 ? whole : any, shape.says());
    }

    private ObjectNode field(Field field) {
        ObjectNode node = described(kind(field), field.says());
        field.usual().ifPresent(usual -> node.put("default", usual));
        if (!field.example().isEmpty()) {
            node.putArray("examples").add(field.example());
        }
        return node;
    }

    private ObjectNode kind(Field field) {
        return switch (field.kind()) {
            case LENGTH -> length();
            case STOCK -> reference("stock");
            case COUNT, COUNT_OR_NONE -> count(field);
            case CHOICE -> words(field.choices());
            case TEXT -> type("string", "number", "boolean");
            case FLAG -> flag();
            case PORTIONS, LENGTHS -> anyOf(length(), listOf(length()));
            case SIDES -> reference("sides");
            case LEANS -> reference("leans");
            case ANGLE -> type("string", "number");
            case PART -> part(field);
            case PARTS -> anyOf(listOf(part(field)), mapOf(part(field)), part(field));
            case OUTLINE -> reference("corners");
            case STEPS -> reference("steps");
        };
    }

    private static ObjectNode count(Field field) {
        ObjectNode count = type("integer");
        count.put("minimum", field.kind() == Field.Kind.COUNT_OR_NONE ? 0 : 1);
        return count;
    }

    private ObjectNode part(Field field) {
        return field.shape().map(this::shape).orElseGet(() -> type("object"));
    }

    /** YAML of either version: yes may be a word or the truth. */
    private static ObjectNode flag() {
        ObjectNode flag = JSON.objectNode();
        flag.putArray("enum").add("yes").add("no").add(true).add(false).addNull();
        return flag;
    }

    private static ObjectNode length() {
        return reference("length");
    }

    private static ObjectNode reference(String definition) {
        return JSON.objectNode().put("$ref", "#/$defs/" + definition);
    }

    private static ObjectNode type(String... types) {
        ObjectNode node = JSON.objectNode();
        if (types.length == 1) {
            return node.put("type", types[0]);
        }
        List.of(types).forEach(node.putArray("type")::add);
        return node;
    }

    private static ObjectNode words(Collection<String> words) {
        ObjectNode node = JSON.objectNode();
        words.forEach(node.putArray("enum")::add);
        return node;
    }

    private static ObjectNode listOf(ObjectNode item) {
        ObjectNode node = type("array");
        node.set("items", item);
        return node;
    }

    private static ObjectNode mapOf(ObjectNode value) {
        ObjectNode node = type("object");
        node.set("additionalProperties", value);
        return node;
    }

    private static ObjectNode anyOf(ObjectNode... choices) {
        ObjectNode node = JSON.objectNode();
        ArrayNode list = node.putArray("anyOf");
        List.of(choices).forEach(list::add);
        return node;
    }

    private static ObjectNode object(ObjectNode node, ObjectNode properties, List<String> required) {
        node.put("type", "object");
        node.set("properties", properties);
        node.put("additionalProperties", false);
        if (!required.isEmpty()) {
            required.forEach(node.putArray("required")::add);
        }
        return node;
    }

    private static ObjectNode described(ObjectNode node, String says) {
        return node.put("description", says);
    }
}
