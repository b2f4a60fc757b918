package scantling.packet;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.layout.UrlAwareLineBreakIterator;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line may end on paper: as usual, but never inside a number. A fraction or a decimal broken in two is misread. */
final class WholeNumbers implements FSTextBreaker {
    private final FSTextBreaker usual = new UrlAwareLineBreakIterator(BreakIterator.getLineInstance(Locale.US));
    private String text = "";

    @Override
    public void setText(String whole) {
        text = whole;
        usual.setText(whole);
    }

    @Override
    public int next() {
        int next = usual.next();
        while (next > 0 && next < text.length() && isOfNumber(next - 1) && isOfNumber(next)) {
            next = usual.next();
        }
        return next;
    }

    private boolean isOfNumber(int at) {
        char letter = text.charAt(at);
        return Character.isDigit(letter) || letter == '/' || letter == '.';
    }
}
