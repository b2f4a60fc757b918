package scantling.web;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** A text as a square code that a phone's camera reads (ISO/IEC 18004), as SVG. */
final class Scan {
    private static final int QUIET = 4;

    private Scan() {}

    /** Draws it. @param says what the code is, for those who do not see it */
    static String svg(String text, String says) {
        BitMatrix bits = bits(text);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < bits.getHeight(); y++) {
            for (int x = 0; x < bits.getWidth(); x++) {
                if (bits.get(x, y)) {
                    path.append("M%d %dh1v1h-1z".formatted(x, y));
                }
            }
        }
        return ("<svg class=\"scan\" role=\"img\" aria-label=\"%s\" viewBox=\"0 0 %d %d\""
                        + " shape-rendering=\"crispEdges\"><rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/><path d=\"%s\""
                        + " fill=\"#000\"/></svg>")
                .formatted(Html.escape(says), bits.getWidth(), bits.getHeight(), path);
    }

    private static BitMatrix bits(String text) {
        try {
            return new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET,
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(
                    "A text of %d characters fits no code.".formatted(text.length()), tooLong);
        }
    }
}
