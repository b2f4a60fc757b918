package scantling.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * The guide with all that it leads to, as markup: read from docs as the build carries it, following the links of the first
 * page. What no link leads to is not served, and no path is made from what a request says.
 */
final class GuideBook {
    /** Name of the page one begins at. */
    static final String FIRST = "README";

    private static final String FOLDER = "/scantling/docs/";
    private static final String GUIDE = "guide/";
    private static final Pattern LINK = Pattern.compile("href=\"([^\":#]+\\.md)(#[^\"]*)?\"");
    private static final Pattern PICTURE =
            Pattern.compile("<img src=\"pictures/([a-z0-9-]+\\.svg)\" alt=\"([^\"]*)\" ?/?>");
    private static final Pattern TITLE = Pattern.compile("(?m)^# (.+)$");

    private final Map<String, Page> pages = new LinkedHashMap<>();
    private final Parser parser;
    private final HtmlRenderer renderer;

    GuideBook() {
        List<Extension> extensions = List.of(TablesExtension.create(), HeadingAnchorExtension.create());
        parser = Parser.builder().extensions(extensions).build();
        renderer = HtmlRenderer.builder()
                .extensions(extensions)
                .escapeHtml(true)
                .sanitizeUrls(true)
                .build();
        Deque<String> ahead = new ArrayDeque<>(List.of(GUIDE + FIRST + ".md"));
        while (!ahead.isEmpty()) {
            String file = ahead.removeFirst();
            if (!pages.containsKey(name(file))) {
                pages.put(name(file), page(file, ahead));
            }
        }
    }

    /** A page. @param markup of its text */
    record Page(String title, String markup) {}

    /** The names of all pages. */
    Set<String> names() {
        return pages.keySet();
    }

    /** A page by its name: first-piece, method/time. */
    Optional<Page> find(String name) {
        return Optional.ofNullable(pages.get(name));
    }

    private Page page(String file, Deque<String> ahead) {
        String text = text(file);
        Matcher title = TITLE.matcher(text);
        String markup = renderer.render(parser.parse(text));
        markup = LINK.matcher(markup).replaceAll(link -> {
            String to = URI.create(file).resolve(link.group(1)).toString();
            ahead.add(to);
            String anchor = Optional.ofNullable(link.group(2)).orElse("");
            return Matcher.quoteReplacement("href=\"" + address(to) + anchor + "\"");
        });
        // Drawn into the page itself, a picture has the typeface and the ink of the page.
        markup = PICTURE.matcher(markup)
                .replaceAll(found -> Matcher.quoteReplacement(
                        "<span class=\"scrollx\">" + text(GUIDE + "pictures/" + found.group(1)) + "</span>"));
        return new Page(title.find() ? title.group(1) : "Guide", markup);
    }

    /** The name of a file's page; the folder of the guide itself is left out. */
    private static String name(String file) {
        return file.replaceFirst("^" + GUIDE, "").replaceFirst("\\.md$", "");
    }

    private static String address(String file) {
        return name(file).equals(FIRST) ? "/guide" : "/guide/" + name(file);
    }

    private static String text(String name) {
        try (InputStream in = GuideBook.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("The build lacks (%s) of the guide.".formatted(name));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The guide's (%s) cannot be read.".formatted(name), unreadable);
        }
    }
}
