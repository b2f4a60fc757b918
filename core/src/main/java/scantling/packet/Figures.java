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
        String id = linked ? id(path) : "";
        LengthFormat.Typeset set = format.typeset(dim.value());
        Origin origin = Origin.of(dim);
        StringBuilder out = new StringBuilder(192).append(id.isEmpty() ? "<span" : "<a");
        out.append(" class=\"n ").append(origin.style());
        out.append("\" title=\"").append(origin.words());
        if (!set.rest().isEmpty()) {
            out.append(", ").append(format.format(dim.value()));
        }
        out.append('"');
        if (!path.isEmpty()) {
            out.append(" data-path=\"").append(escape(path)).append('"');
        }
        out.append(place(dim));
        if (!id.isEmpty()) {
            out.append(" href=\"#").append(id).append('"');
        }
        out.append('>').append(escape(set.figure()));
        if (!set.rest().isEmpty()) {
            out.append("<span class=\"leftover\">\u00a0").append(set.rest()).append("</span>");
        }
        return out.append(id.isEmpty() ? "</span>" : "</a>").toString();
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
                ? " data-given=\"" + given.span().start() + '"'
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
