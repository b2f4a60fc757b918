package scantling.shop;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import scantling.packet.Shown;

/** Photographs made ready for paper: what paper cannot take as it is becomes a jpg, and what cannot be read is counted. */
public final class Prints {
    /** So many picture points across show all that a sheet can; larger files only weigh more. */
    private static final int WIDEST = 1600;

    private static final long MOST_POINTS = 60_000_000L;

    private final boolean names;
    private final List<Shown.Picture> pictures = new ArrayList<>();
    private int unprinted;

    /** @param names whether the record may say who made the piece and for whom */
    public Prints(boolean names) {
        this.names = names;
    }

    /** Takes one more. @param caption what stands under it; may be empty @return whether it can be printed */
    public boolean add(Photo photo, String caption) {
        Optional<Shown.Picture> picture = photo.kind().equals("webp")
                ? jpg(photo.bytes()).map(bytes -> new Shown.Picture("jpg", bytes, caption))
                : Optional.of(new Shown.Picture(photo.kind(), photo.bytes(), caption));
        picture.ifPresentOrElse(pictures::add, () -> unprinted++);
        return picture.isPresent();
    }

    /** All of them. */
    public Shown shown() {
        return new Shown(names, pictures, unprinted);
    }

    private static Optional<byte[]> jpg(byte[] webp) {
        ImageReader reader = new WebPImageReaderSpi().createReaderInstance(null);
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(webp))) {
            reader.setInput(in);
            long points = (long) reader.getWidth(0) * reader.getHeight(0);
            if (points > MOST_POINTS) {
                return Optional.empty();
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(onPaper(reader.read(0)), "jpg", out);
            return Optional.of(out.toByteArray());
        } catch (IOException | RuntimeException damaged) {
            // Decoders of damaged files fail in many ways; the sheet then says that a photograph is missing.
            return Optional.empty();
        } finally {
            reader.dispose();
        }
    }

    /** White where it is clear, and no wider than paper can show. */
    private static BufferedImage onPaper(BufferedImage image) {
        double by = Math.min(1, (double) WIDEST / Math.max(image.getWidth(), image.getHeight()));
        int wide = Math.max(1, (int) Math.round(image.getWidth() * by));
        int high = Math.max(1, (int) Math.round(image.getHeight() * by));
        BufferedImage paper = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = paper.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.setColor(Color.WHITE);
        brush.fillRect(0, 0, wide, high);
        brush.drawImage(image, 0, 0, wide, high, null);
        brush.dispose();
        return paper;
    }
}
