package scantling.web;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Judges a page by the rules of axe-core (Web Content Accessibility Guidelines 2.2, levels A and AA): nothing serious or
 * critical may be found.
 */
final class Accessible {
    private static final String RULES = rules();
    private static final String ASK = """
        async () => {
          const result = await axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations']});
          return result.violations.filter(v => v.impact === 'serious' || v.impact === 'critical')
            .map(v => v.id + ' (' + v.help + '): ' + v.nodes.slice(0, 4).map(n => n.html.slice(0, 160)).join(' | ')).join('\\n');
        }
        """;

    private Accessible() {}

    /** What is wrong, one to a line; empty when nothing is. */
    static String problems(Page page) {
        page.evaluate(RULES);
        return String.valueOf(page.evaluate(ASK));
    }

    private static String rules() {
        try (InputStream in = Accessible.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
