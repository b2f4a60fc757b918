package scantling.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One element of a drawing, immutable. It is written canonically: attributes sorted, numbers with two decimals at most,
 * a full stop as decimal sign wherever it runs; so the same drawing is the same text.
 */
record Svg(String name, SortedMap<String, String> attributes, List<Svg> children, String text) {
    private static final int DECIMALS = 2;

    Svg {
        attributes = Collections.unmodifiableSortedMap(new TreeMap<>(attributes));
        children = List.copyOf(children);
    }

    static Svg of(String name) {
        return new Svg(name, new TreeMap<>(), List.of(), "");
    }

    Svg with(String key, String value) {
        SortedMap<String, String> more = new TreeMap<>(attributes);
        more.put(key, value);
        return new Svg(name, more, children, text);
    }

    Svg with(String key, double value) {
        return with(key, number(value));
    }

    Svg holding(List<Svg> more) {
        List<Svg> all = new ArrayList<>(children);
        all.addAll(more);
        return new Svg(name, attributes, all, text);
    }

    Svg saying(String words) {
        return new Svg(name, attributes, children, words);
    }

    void write(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((key, value) ->
                out.append(' ').append(key).append("=\"").append(escape(value)).append('"'));
        if (children.isEmpty() && text.isEmpty()) {
            out.append("/>");
            return;
        }
        out.append('>').append(escape(text));
        children.forEach(child -> child.write(out));
        out.append("</").append(name).append('>');
    }

    static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String escape(String raw) {
        return raw.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
