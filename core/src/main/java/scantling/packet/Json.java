package scantling.packet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import scantling.drawing.Origin;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/** What all parts of a plan as JSON are written with. */
final class Json {
    private static final SumText SUMS = new SumText(LengthFormat.MM);

    private Json() {}

    static ObjectNode sizes(Map<String, Dim> sizes) {
        ObjectNode node = object();
        new TreeMap<>(sizes).forEach((name, dim) -> node.set(name, length(dim)));
        return node;
    }

    static ObjectNode length(Dim dim) {
        ObjectNode node = object().put("mm", dim.value().millimetres());
        dim.findPath().ifPresent(path -> node.put("path", path));
        return node.put("how", SUMS.of(dim)).put("from", Origin.of(dim).words());
    }

    static <T> void each(ObjectNode node, String key, List<T> all, BiConsumer<ObjectNode, T> write) {
        ArrayNode array = node.putArray(key);
        all.forEach(one -> write.accept(array.addObject(), one));
    }

    static void texts(ObjectNode node, String key, List<String> texts) {
        ArrayNode array = node.putArray(key);
        texts.forEach(array::add);
    }

    static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
