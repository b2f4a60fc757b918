package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.packet.Shown;

/** Pictures of 16 by 12 points, all RGB 200 30 30, written by libwebp 1.2.4: without loss and with it. */
class PrintsTest {
    private static final String WITHOUT_LOSS = "UklGRh4AAABXRUJQVlA4TBEAAAAvD8ACAAdQjyLXo/+BiOh/AAA=";
    private static final String WITH_LOSS =
            "UklGRj4AAABXRUJQVlA4IDIAAADQAQCdASoQAAwAAMASJaACdLoB+AADsAD++X2//00jxpHjSPmLf/ugT90CfugT/3NoAA==";

    private static Photo photo(String base64) {
        return Photo.of(Base64.getDecoder().decode(base64)).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {WITHOUT_LOSS, WITH_LOSS})
    void whatPaperCannotTakeBecomesAPictureItCan(String webp) throws IOException {
        Prints prints = new Prints(false);
        assertTrue(prints.add(photo(webp), "The ends, dry"));
        Shown.Picture picture = prints.shown().pictures().get(0);
        assertEquals("jpg", picture.kind());
        assertEquals("The ends, dry", picture.caption());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.bytes()));
        assertEquals(16, image.getWidth());
        assertEquals(12, image.getHeight());
        Color middle = new Color(image.getRGB(8, 6));
        assertEquals(200, middle.getRed(), 6);
        assertEquals(30, middle.getGreen(), 6);
        assertEquals(30, middle.getBlue(), 6);
    }

    @Test
    void aDamagedOneIsCountedAndTheOthersAreThere() {
        byte[] whole = Base64.getDecoder().decode(WITH_LOSS);
        Photo torn = Photo.of(Arrays.copyOf(whole, 24)).orElseThrow();
        Prints prints = new Prints(true);
        assertFalse(prints.add(torn, "torn"));
        assertTrue(prints.add(photo(WITHOUT_LOSS), ""));
        assertEquals(1, prints.shown().unprinted());
        assertEquals(1, prints.shown().pictures().size());
        assertTrue(prints.shown().names());
    }
}
