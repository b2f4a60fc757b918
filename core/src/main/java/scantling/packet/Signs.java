package scantling.packet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The signs of a page that the paper's own typeface has no shape for. Greek, Cyrillic, Hebrew and further Latin come from a
 * second face; what neither has is printed as # and named on the last sheet.
 *
 * @param helped those that the second face has
 * @param gone those that no face here has
 */
record Signs(Set<Integer> helped, Set<Integer> gone) {
    /** Name of the second face. */
    static final String SECOND = "Liberation Sans";

    private static final int MOST = 24;
    private static final List<Integer> WEIGHTS = List.of(400, 500, 700);
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final IntPredicate OWN = shapes(Resources.bytes("fonts/national-park-400-normal.ttf"));

    /** Looks through a text. */
    static Signs of(String text) {
        Set<Integer> foreign = text.codePoints()
                .distinct()
                .filter(sign -> !Character.isWhitespace(sign) && !Character.isISOControl(sign) && !OWN.test(sign))
                .boxed()
                .collect(Collectors.toCollection(TreeSet::new));
        if (foreign.isEmpty()) {
            return new Signs(Set.of(), Set.of());
        }
        IntPredicate second = shapes(second());
        Set<Integer> helped = new TreeSet<>(foreign);
        helped.removeIf(sign -> !second.test(sign));
        foreign.removeAll(helped);
        return new Signs(helped, foreign);
    }

    private static IntPredicate shapes(byte[] face) {
        try (var font = new TTFParser(true).parse(new RandomAccessReadBuffer(face))) {
            CmapLookup lookup = font.getUnicodeCmapLookup();
            Set<Integer> there = new TreeSet<>();
            for (int sign = 0; sign <= Character.MAX_VALUE; sign++) {
                if (lookup.getGlyphId(sign) != 0) {
                    there.add(sign);
                }
            }
            return there::contains;
        } catch (IOException e) {
            throw new UncheckedIOException("A typeface of the program cannot be read.", e);
        }
    }

    private static byte[] second() {
        try (InputStream in = Signs.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("The second typeface (%s) is missing.".formatted(FILE));
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("The second typeface (%s) cannot be read.".formatted(FILE), e);
        }
    }

    /** A page with the second face behind the first where it helps, and with what is gone named at its end. */
    String on(String html) {
        String page = html;
        if (!helped.isEmpty()) {
            page = page.replaceAll(
                            "font-family:\"(National Park|Alegreya Sans)\"(?!;font-style)",
                            "font-family:\"$1\",\"" + SECOND + "\"")
                    .replaceFirst("<style>", "<style>" + faces());
        }
        return gone.isEmpty() ? page : page.replace("</body>", "<p class=\"quiet\">" + told() + "</p></body>");
    }

    /** It has one weight; said to be of all, so that no renderer makes it bold by drawing it twice. */
    private static String faces() {
        String letters = Base64.getEncoder().encodeToString(second());
        return WEIGHTS.stream()
                .map(weight ->
                        "@font-face{font-family:\"%s\";font-style:normal;font-weight:%d;-fs-pdf-font-embed:embed;src:url(data:font/ttf;base64,%s)}"
                                .formatted(SECOND, weight, letters))
                .collect(Collectors.joining());
    }

    /** What is gone, by the numbers of its signs. */
    private String told() {
        return "Printed as #, for no typeface here has a shape for them: "
                + gone.stream().limit(MOST).map("U+%04X"::formatted).collect(Collectors.joining(", "))
                + (gone.size() > MOST ? " and %d more.".formatted(gone.size() - MOST) : ".");
    }
}
