package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.SVGLoader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.measure.LengthFormat;
import scantling.packet.Shelf;

/**
 * Drawings as two renderers see them that are not ours: JSVG and, where it is installed, Chromium. Letters differ by typeface, so
 * what is compared is how much ink lies in each field of a coarse grid.
 */
class TwoRenderersTest {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final int FIELD = 24;

    @TempDir
    Path folder;

    private static BufferedImage white(int wide, int high) {
        BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, wide, high);
        graphics.dispose();
        return image;
    }

    private static BufferedImage byLibrary(Drawing drawing) {
        BufferedImage image = white((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height()));
        SVGDocument document = Objects.requireNonNull(new SVGLoader()
                .load(
                        new ByteArrayInputStream(drawing.screenSvg().getBytes(StandardCharsets.UTF_8)),
                        null,
                        com.github.weisj.jsvg.parser.LoaderContext.createDefault()));
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        document.render(null, graphics);
        graphics.dispose();
        return image;
    }

    private BufferedImage byBrowser(Drawing drawing) throws Exception {
        Path page = Files.writeString(
                folder.resolve("drawing.html"),
                "<!doctype html><body style=\"margin:0;background:#fff\">" + drawing.screenSvg());
        Path picture = folder.resolve("drawing.png");
        Process process = new ProcessBuilder(
                        CHROMIUM.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--hide-scrollbars",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--screenshot=" + picture,
                        "--window-size=%d,%d"
                                .formatted((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height())),
                        page.toUri().toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        assertTrue(process.waitFor(180, TimeUnit.SECONDS), "the browser did not answer");
        return ImageIO.read(picture.toFile());
    }

    /** The share of ink in one field, 0 to 1. */
    private static double ink(BufferedImage image, int left, int top) {
        double sum = 0;
        for (int y = top; y < Math.min(top + FIELD, image.getHeight()); y++) {
            for (int x = left; x < Math.min(left + FIELD, image.getWidth()); x++) {
                Color colour = new Color(image.getRGB(x, y));
                sum += 1 - (colour.getRed() + colour.getGreen() + colour.getBlue()) / 765.0;
            }
        }
        return sum / (FIELD * FIELD);
    }

    private static List<Drawing> drawings() {
        Views views = new Views(Shelf.assembly(), LengthFormat.MM);
        return List.of(views.front(), views.section());
    }

    @Test
    void bothSeeTheSameInkInTheSamePlaces() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(CHROMIUM));
        for (Drawing drawing : drawings()) {
            BufferedImage one = byLibrary(drawing);
            BufferedImage other = byBrowser(drawing);
            int fields = 0;
            int apart = 0;
            for (int top = 0; top < one.getHeight(); top += FIELD) {
                for (int left = 0; left < one.getWidth(); left += FIELD) {
                    fields++;
                    apart += Math.abs(ink(one, left, top) - ink(other, left, top)) > 0.08 ? 1 : 0;
                }
            }
            int wrong = apart;
            assertTrue(apart * 50 <= fields, () -> drawing.title() + ": " + wrong + " fields differ");
        }
    }

    @Test
    void theLibraryFindsInkWhereThereAreLines() {
        for (Drawing drawing : drawings()) {
            BufferedImage image = byLibrary(drawing);
            double all = 0;
            for (int top = 0; top < image.getHeight(); top += FIELD) {
                for (int left = 0; left < image.getWidth(); left += FIELD) {
                    all += ink(image, left, top);
                }
            }
            assertTrue(all > 5, drawing.title() + ": " + all);
        }
    }
}
