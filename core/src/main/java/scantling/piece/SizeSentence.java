package scantling.piece;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The overall size as one says it: {@code 500 wide, 420 deep, 620 high}. */
final class SizeSentence {
    /** What a direction is called in a path. */
    static final Map<String, String> WORDS = words();

    private static final Pattern ONE =
            Pattern.compile("(?<length>.*\\S)\\s*\\b(?<word>wide|long|deep|high|tall)\\b\\s*");

    private SizeSentence() {}

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("wide", "width");
        words.put("long", "width");
        words.put("deep", "depth");
        words.put("high", "height");
        words.put("tall", "height");
        return words;
    }

    /** The lengths in the sentence by width, depth, height; what is not such a length by its own text. */
    record Said(Map<String, Phrase> sizes, Map<String, Phrase> others) {}

    /** Takes a sentence apart. */
    static Said read(Node.Scalar scalar) {
        Map<String, Phrase> sizes = new LinkedHashMap<>();
        Map<String, Phrase> others = new LinkedHashMap<>();
        Phrase whole = Phrase.of(scalar);
        String text = whole.text();
        int from = 0;
        while (from <= text.length()) {
            int comma = text.indexOf(',', from);
            int to = comma < 0 ? text.length() : comma;
            Phrase part = whole.sub(from, to).strip();
            Matcher one = ONE.matcher(part.text());
            Optional<String> word =
                    one.matches() ? Optional.ofNullable(WORDS.get(one.group("word"))) : Optional.empty();
            boolean taken = word.isPresent()
                    && sizes.putIfAbsent(
                                    word.get(), part.sub(0, one.end("length")).strip())
                            == null;
            if (!taken) {
                others.put(part.text(), part);
            }
            from = to + 1;
        }
        return new Said(sizes, others);
    }
}
