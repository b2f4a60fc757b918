package scantling.web;

/** Text as it stands in markup, for the few places where markup is not made by a template. */
final class Html {
    private Html() {}

    static String escape(String raw) {
        return raw.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
