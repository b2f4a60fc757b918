package scantling.packet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** Style sheets and typefaces that are part of the program. */
final class Resources {
    private Resources() {}

    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** A typeface as a rule of a style sheet that carries it in itself. */
    static String face(String family, String style, int weight, String file, String type) {
        return "@font-face{font-family:\"%s\";font-style:%s;font-weight:%d;-fs-pdf-font-embed:embed;src:url(data:font/%s;base64,%s)}%n"
                .formatted(family, style, weight, type, Base64.getEncoder().encodeToString(bytes("fonts/" + file)))
                .replace(System.lineSeparator(), "\n");
    }

    static byte[] bytes(String name) {
        try (InputStream in = Resources.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("The resource (%s) is missing.".formatted(name));
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("The resource (%s) cannot be read.".formatted(name), e);
        }
    }
}
