package scantling.packet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.drawing.Origin;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.measure.Making;

/** Writes figures as markup: line style by origin, path in {@code data-path}, on a screen a link to its sum. */
final class Figures {
    private final LengthFormat format;
    private final boolean linked;
    private final Map<String, String> ids = new LinkedHashMap<>();

    Figures(LengthFormat format, Iterable<String> paths, boolean linked) {
        this.format = format;
        this.linked = linked;
        int next = 1;
        for (String path : paths) {
            ids.put(path, "sum-" + next++);
        }
    }

    /** Whether each links to its sum. */
    boolean areLinked() {
        return linked;
    }

    String of(Dim dim) {
        String path = dim.findPath().orElse("");
        LengthFormat.Typeset set = format.typeset(dim.value());
        String attributes = "class=\"n %s\" title=\"%s%s\"%s%s"
                .formatted(
                        Origin.of(dim).style(),
                        Origin.of(dim).words(),
                        set.rest().isEmpty() ? "" : ", " + format.format(dim.value()),
                        path.isEmpty() ? "" : " data-path=\"" + escape(path) + "\"",
                        place(dim));
        String rest = set.rest().isEmpty() ? "" : "<span class=\"leftover\">\u00a0" + set.rest() + "</span>";
        String figure = escape(set.figure()) + rest;
        String id = id(path);
        return linked && !id.isEmpty()
                ? "<a %s href=\"#%s\">%s</a>".formatted(attributes, id, figure)
                : "<span %s>%s</span>".formatted(attributes, figure);
    }

    /** Where the text gives it, so that a page can change it there. */
    private static String place(Dim dim) {
        Making making = dim.making();
        if (making instanceof Making.Named named) {
            return place(named.planned());
        }
        if (making instanceof Making.Set set) {
            return place(set.set());
        }
        return making instanceof Making.Given given
                ? " data-given=\"%d\"".formatted(given.span().start())
                : "";
    }

    String sizes(Map<String, Dim> sizes) {
        return sizes.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> escape(entry.getKey()) + " " + of(entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    String id(String path) {
        return ids.getOrDefault(path, "");
    }

    static String escape(String raw) {
        return raw.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
