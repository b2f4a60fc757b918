package scantling.packet;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers the paper library's wish for a typeface of the machine with one of the program's own. A packet so looks the same
 * on every machine, and no folder of fonts is searched and no list of them left in the maker's home.
 *
 * @param letters the typeface
 */
record OwnLetters(TrueTypeFont letters) implements FontMapper {
    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor wanted) {
        return new FontMapping<>(letters, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor wanted) {
        return new FontMapping<>(letters, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor wanted, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, letters, true);
    }
}
