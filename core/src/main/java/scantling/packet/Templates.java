package scantling.packet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Runs the page templates, which are compiled with the program. */
final class Templates {
    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Templates.class.getClassLoader(), "scantling.packet.pages");

    private Templates() {}

    static String render(String name, Object page, String css) {
        return run(name, Map.of("page", page, "css", css));
    }

    static String body(String name, PacketPage page) {
        return run(name, Map.of("page", page));
    }

    private static String run(String name, Map<String, Object> values) {
        StringOutput out = new StringOutput();
        ENGINE.render(name, values, out);
        return out.toString();
    }
}
