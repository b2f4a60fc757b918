package scantling.web;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What requests say, read with care: everything has a longest length and nothing is ever missing. */
final class Requests {
    static final int LINE = 400;
    static final int TEXT = 1_000_000;
    private static final int SHOWN = 60;

    private Requests() {}

    /** A field of a form; empty when it is not there. */
    static String field(Context ctx, String name, int longest) {
        return limited(Optional.ofNullable(ctx.formParam(name)).orElse(""), name, longest);
    }

    /** A parameter of the address; empty when it is not there. */
    static String query(Context ctx, String name) {
        return limited(Optional.ofNullable(ctx.queryParam(name)).orElse(""), name, LINE);
    }

    private static String limited(String value, String name, int longest) {
        if (value.length() > longest) {
            throw new Refused(
                    Refused.TOO_LARGE,
                    "\"%s\" is %d characters long; at most %d are taken.".formatted(name, value.length(), longest),
                    "Shorten it.");
        }
        return value;
    }

    /** A whole number in a field. */
    static int number(Context ctx, String name) {
        return number(field(ctx, name, LINE), name);
    }

    static int number(String value, String name) {
        if (!value.matches("\\d{1,9}")) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s\" must be a whole number, not \"%s\".".formatted(name, shown(value)),
                    "Load the page again.");
        }
        return Integer.parseInt(value);
    }

    /** Whether a page script asks, which wants a part of a page. */
    static boolean isPart(Context ctx) {
        return ctx.header("HX-Request") != null;
    }

    /** Whether somebody looks at the answer as a page. */
    static boolean wantsPage(Context ctx) {
        return !isPart(ctx)
                && Optional.ofNullable(ctx.header("Accept")).orElse("").contains("text/html");
    }

    /** A text as part of an address. */
    static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** As much of a text as an answer may repeat. */
    static String shown(String text) {
        String clean = text.replaceAll("\\p{Cntrl}", " ");
        return clean.length() <= SHOWN ? clean : clean.substring(0, SHOWN) + " ...";
    }
}
