package scantling.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Text as it stands in markup, for the few places where a template does not do it. */
final class Html {
    private Html() {}

    /** A text as a value in an address. */
    static String coded(String raw) {
        return URLEncoder.encode(raw, StandardCharsets.UTF_8);
    }

    static String escape(String raw) {
        return raw.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
