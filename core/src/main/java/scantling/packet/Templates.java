package scantling.packet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Runs the page templates, which are compiled with the program. */
final class Templates {
    private static final String PACKAGE = "scantling.packet.pages";

    private Templates() {}

    static String render(String name, PacketPage page, String css) {
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, Templates.class.getClassLoader(), PACKAGE);
        StringOutput out = new StringOutput();
        engine.render(name, Map.<String, Object>of("page", page, "css", css), out);
        return out.toString();
    }
}
