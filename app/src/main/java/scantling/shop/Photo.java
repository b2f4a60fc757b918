package scantling.shop;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;

/** A picture from the bench. @param id SHA-256 of its bytes @param kind {@code jpg}, {@code png} or {@code webp} */
public record Photo(String id, String kind, byte[] bytes) {
    /** Larger ones are refused. */
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    /** What kind of picture these bytes begin like; empty when they are none or too many. */
    public static Optional<Photo> of(byte[] bytes) {
        return bytes.length > MOST_BYTES
                ? Optional.empty()
                : kind(bytes).map(kind -> new Photo(Devices.sha256(bytes), kind, bytes.clone()));
    }

    private static Optional<String> kind(byte[] bytes) {
        String start = HexFormat.of().formatHex(bytes, 0, Math.min(bytes.length, 12));
        if (start.startsWith("ffd8ff")) {
            return Optional.of("jpg");
        } else if (start.startsWith("89504e470d0a1a0a")) {
            return Optional.of("png");
        }
        String text = new String(bytes, 0, Math.min(bytes.length, 12), StandardCharsets.ISO_8859_1);
        return text.startsWith("RIFF") && text.endsWith("WEBP") ? Optional.of("webp") : Optional.empty();
    }
}
