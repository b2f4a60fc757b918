package scantling.packet;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import scantling.measure.Beside;
import scantling.measure.Once;

/** What a packet says, worked out once for all pages that say some of it. */
final class PacketMatter {
    private final PacketContent content;
    private final Drawings drawings;
    private final Figures figures;
    private final Map<String, String> marks = new TreeMap<>();
    private final List<MarginNote> notes;
    private final WorkPages work;
    private final Beside<LastingPages> lasting;
    private final SupplyPages supplies;
    private final Once<RoutePages> route;
    private final Once<DayPages> days;

    /** @param screen whether figures link to their sums */
    PacketMatter(PacketContent content, Drawings drawings, boolean screen) {
        this.content = content;
        this.drawings = drawings;
        this.figures = new Figures(content.format(), content.assembly().names().keySet(), screen);
        content.groups().forEach(group -> group.paths().forEach(path -> marks.put(path, group.mark())));
        this.notes = MarginNote.of(content, figures);
        this.supplies = SupplyPages.of(content, marks);
        this.work = new WorkPages(content, drawings, figures, marks);
        this.lasting = Beside.begin(() -> LastingPages.of(content));
        this.route = Once.of(() -> new RoutePages(content.route(), content.format(), this::mark));
        this.days = Once.of(() -> new DayPages(content, route.get()));
    }

    PacketContent content() {
        return content;
    }

    Drawings drawings() {
        return drawings;
    }

    Figures figures() {
        return figures;
    }

    List<MarginNote> notes() {
        return notes;
    }

    WorkPages work() {
        return work;
    }

    LastingPages lasting() {
        return lasting.get();
    }

    SupplyPages supplies() {
        return supplies;
    }

    RoutePages route() {
        return route.get();
    }

    DayPages days() {
        return days.get();
    }

    /** The mark of a part, or its path where it has none. */
    String mark(String path) {
        return marks.getOrDefault(path, path);
    }

    /** Whether there is anything to say in a section; some take long to tell. @param id its anchor */
    boolean has(String id) {
        return switch (id) {
            case "buying" -> !supplies.buying().isEmpty();
            case "milling" -> !content.blanks().isEmpty();
            case "cutting" -> !content.sheets().isEmpty();
            case "settings" -> !work.settings().isEmpty();
            case "joints" -> !work.joints().isEmpty();
            case "hardware" -> !work.fittings().isEmpty();
            case "route" -> !content.route().operations().isEmpty();
            case "gluing" -> !content.route().order().sessions().isEmpty();
            case "lasting" -> lasting().says();
            case "finish" -> !supplies.finish().isEmpty();
            case "findings" -> !notes.isEmpty();
            default -> true;
        };
    }
}
