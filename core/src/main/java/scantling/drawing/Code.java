package scantling.drawing;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;
import scantling.measure.LengthFormat;

/** A square code (ISO/IEC 18004) that a phone reads, drawn as bars one module high. */
public final class Code {
    private static final int QUIET = 4;

    private Code() {}

    /** Draws it. @param text what it says, a few hundred characters at most @param side of the whole with its quiet border, in mm */
    public static Drawing of(String text, double side) {
        ByteMatrix modules = modules(text);
        double module = side * Scale.UNITS_PER_MM / (modules.getWidth() + 2 * QUIET);
        Sketch sketch = new Sketch(LengthFormat.MM);
        for (int row = 0; row < modules.getHeight(); row++) {
            bars(sketch, modules, row, module);
        }
        double whole = side * Scale.UNITS_PER_MM;
        Drawing drawn = sketch.finish("Code: " + text, new Scale(10));
        return new Drawing(drawn.title(), drawn.scale(), 0, 0, whole, whole, drawn.marks());
    }

    private static void bars(Sketch sketch, ByteMatrix modules, int row, double module) {
        double y = (row + QUIET + 0.5) * module;
        int from = -1;
        for (int column = 0; column <= modules.getWidth(); column++) {
            boolean dark = column < modules.getWidth() && modules.get(column, row) == 1;
            if (dark && from < 0) {
                from = column;
            } else if (!dark && from >= 0) {
                sketch.line(new Spot((from + QUIET) * module, y), new Spot((column + QUIET) * module, y), module);
                from = -1;
            }
        }
    }

    private static ByteMatrix modules(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("A code cannot hold (%d) characters.".formatted(text.length()), e);
        }
    }
}
