package scantling.piece;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import scantling.measure.Span;

/**
 * Bytes of a file as a text, or why they are none.
 *
 * @param text there when the bytes are text, without a byte order mark
 * @param problem there when they are not
 */
public record PieceBytes(Optional<String> text, Optional<Problem> problem) {
    /** Larger than any description by far; keeps reading cheap. */
    static final int MOST_BYTES = 2 * 1024 * 1024;

    static final String TOO_LONG = "The description is larger than 2 MB.";
    static final String TOO_LONG_REMEDY = "A piece takes a few pages of text; is this the right file?";

    static boolean isTooLong(int length) {
        return length > MOST_BYTES;
    }

    static PieceBytes of(byte[] bytes) {
        if (isTooLong(bytes.length)) {
            return refused(0, TOO_LONG, TOO_LONG_REMEDY);
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                return refused(i, "This is no text: byte %d is zero.".formatted(i), "Give a text file saved as UTF-8.");
            }
        }
        return decoded(bytes);
    }

    private static PieceBytes decoded(byte[] bytes) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(rest).toString();
            return new PieceBytes(Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text), Optional.empty());
        } catch (CharacterCodingException notUtf8) {
            int at = rest.position();
            int line = 1;
            for (int i = 0; i < at; i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            return refused(
                    at,
                    "The text is not UTF-8: line %d holds a byte (0x%02X) that cannot stand there."
                            .formatted(line, bytes[Math.min(at, bytes.length - 1)] & 0xFF),
                    "Save the file as UTF-8.");
        }
    }

    private static PieceBytes refused(int at, String message, String remedy) {
        return new PieceBytes(Optional.empty(), Optional.of(new Problem(new Span(1, 1, at, at), message, remedy)));
    }
}
