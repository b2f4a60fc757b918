package scantling.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Runs the page templates, which are compiled with the program. */
final class Pages {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "scantling.web.pages");

    /** A page or a part of one. @param values what the template asks for, by name */
    String render(String name, Map<String, Object> values) {
        StringOutput out = new StringOutput();
        engine.render(name + ".jte", values, out);
        return out.toString();
    }
}
