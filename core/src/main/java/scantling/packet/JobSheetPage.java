package scantling.packet;

import java.util.List;
import java.util.stream.Collectors;
import scantling.measure.Beside;

/** The job sheet as one self-contained page: typefaces and drawings inside it, no script, nothing to fetch. */
public final class JobSheetPage {
    private static final String PARK = "National Park";
    private static final String ALEGREYA = "Alegreya Sans";
    /** In the order of the sheet. */
    private static final List<String> SECTIONS = List.of(
            "sheettop.jte", "sheetviews.jte", "sheetparts.jte", "sheetwork.jte", "sheettimber.jte", "sheetrest.jte");

    private JobSheetPage() {}

    /** Writes it. */
    public static String html(PacketContent content) {
        return html(content, Drawings.of(content));
    }

    static String html(PacketContent content, Drawings drawings) {
        return Templates.render("sheetpage.jte", PacketPage.onScreen(content, drawings), css());
    }

    /** What stands on the sheet, without the page around it: for a page that brings its own head and style sheet. */
    public static String body(PacketContent content) {
        PacketPage page = PacketPage.onScreen(content, Drawings.of(content));
        // Written beside each other: none needs to know what stands in another.
        List<Beside<String>> written = SECTIONS.stream()
                .map(section -> Beside.begin(() -> Templates.body(section, page)))
                .toList();
        return written.stream().map(Beside::get).collect(Collectors.joining("\n"));
    }

    /** The style sheet that goes with the sheet, without its typefaces. */
    public static String style() {
        return Resources.text("sheet.css");
    }

    static String css() {
        return Resources.face(PARK, "normal", 400, "national-park-latin-400-normal.woff2", "woff2")
                + Resources.face(PARK, "normal", 500, "national-park-latin-500-normal.woff2", "woff2")
                + Resources.face(PARK, "normal", 600, "national-park-latin-600-normal.woff2", "woff2")
                + Resources.face(ALEGREYA, "italic", 500, "alegreya-sans-latin-500-italic.woff2", "woff2")
                + Resources.face(ALEGREYA, "italic", 700, "alegreya-sans-latin-700-italic.woff2", "woff2")
                + style();
    }
}
