package scantling.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import scantling.packet.JobSheetPage;

/**
 * Everything that pages fetch besides pages: style sheets, scripts and typefaces, all part of the build. The list is
 * closed; no path is ever made from what a request says.
 */
public final class Assets {
    private static final String CSS = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String FACE = "font/woff2";
    private static final String LIBRARIES = "/META-INF/resources/webjars/";
    private static final String FACES = "/scantling/packet/fonts/";
    private static final String MARK = "mark.svg";
    private static final int STAMP_BYTES = 6;

    private final Map<String, Asset> all = new LinkedHashMap<>();

    /** One of them. @param type for the browser @param bytes what it is @param stamp changes whenever the bytes do */
    private record Asset(String type, byte[] bytes, String stamp) {}

    Assets() {
        put("sheet.css", CSS, (JobSheetPage.style() + own("desk.css")).getBytes(StandardCharsets.UTF_8));
        put("bench.css", CSS, (JobSheetPage.style() + own("bench.css")).getBytes(StandardCharsets.UTF_8));
        for (String script : new String[] {"desk.js", "text.js", "round.js", "bench.js"}) {
            put(script, SCRIPT, bytes("/scantling/web/" + script));
        }
        put(MARK, "image/svg+xml", bytes("/scantling/web/" + MARK));
        put("htmx.js", SCRIPT, bytes(LIBRARIES + "htmx.org/2.0.8/dist/htmx.min.js"));
        put("three.js", SCRIPT, bytes(LIBRARIES + "three/0.164.1/build/three.module.min.js"));
        for (String face : new String[] {
            "national-park-latin-400-normal",
            "national-park-latin-500-normal",
            "national-park-latin-600-normal",
            "alegreya-sans-latin-500-italic",
            "alegreya-sans-latin-700-italic"
        }) {
            put(face + ".woff2", FACE, bytes(FACES + face + ".woff2"));
        }
    }

    private static String own(String name) {
        return new String(bytes("/scantling/web/faces.css"), StandardCharsets.UTF_8)
                + new String(bytes("/scantling/web/" + name), StandardCharsets.UTF_8);
    }

    private void put(String name, String type, byte[] bytes) {
        all.put(name, new Asset(type, bytes, stamp(bytes)));
    }

    /** The address of one, which changes with its bytes, so that browsers may keep it for good. */
    String address(String name) {
        return "/assets/" + name + "?v=" + asset(name).stamp();
    }

    private Asset asset(String name) {
        Asset asset = all.get(name);
        if (asset == null) {
            throw Refused.noSuch("file");
        }
        return asset;
    }

    void serve(Context ctx) {
        serve(ctx, asset(ctx.pathParam("name")));
    }

    /** The shop's mark, which browsers ask for beside a file that is no page. */
    void serveMark(Context ctx) {
        serve(ctx, asset(MARK));
    }

    private static void serve(Context ctx, Asset asset) {
        ctx.contentType(asset.type());
        ctx.header(
                "Cache-Control",
                asset.stamp().equals(ctx.queryParam("v")) ? "public, max-age=31536000, immutable" : "no-cache");
        ctx.result(asset.bytes());
    }

    private static String stamp(byte[] bytes) {
        return print(bytes).substring(0, 2 * STAMP_BYTES);
    }

    /** The same for the same bytes, and for no others. */
    static String print(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", missing);
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Assets.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("The build lacks (%s).".formatted(name));
            }
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The build's (%s) cannot be read.".formatted(name), unreadable);
        }
    }
}
