package scantling.packet;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Makes the tags of a document small. The renderer gives every box an object of its own that says 'this is only background',
 * with its place, and one for every run of text; thousands of them take longer to write than the text itself. One object
 * says it for all backgrounds (their place may be left out: ISO 32000-1, 14.8.2.2), and those of text are written in line.
 */
final class PaperTags {
    private PaperTags() {}

    static void slim(PDDocument document) {
        COSDictionary background = new COSDictionary();
        background.setItem(COSName.TYPE, COSName.BACKGROUND);
        for (PDPage page : document.getPages()) {
            COSBase properties = page.getResources().getCOSObject().getDictionaryObject(COSName.PROPERTIES);
            if (properties instanceof COSDictionary named) {
                slim(named, background);
            }
        }
    }

    private static void slim(COSDictionary properties, COSDictionary background) {
        for (COSName name : properties.keySet()) {
            if (properties.getDictionaryObject(name) instanceof COSDictionary said) {
                if (COSName.BACKGROUND.equals(said.getCOSName(COSName.TYPE))) {
                    properties.setItem(name, background);
                } else {
                    said.setDirect(true);
                }
            }
        }
    }
}
