package scantling.shop;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/** Values as the words that stand in the file, and back. What does not read is an {@link IllegalArgumentException}. */
final class Words {
    private Words() {}

    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static <E extends Enum<E>> E find(E[] values, String word) {
        return Stream.of(values)
                .filter(value -> of(value).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("(%s) is none of (%s)."
                        .formatted(word, Stream.of(values).map(Words::of).toList())));
    }

    static String of(Optional<Long> price) {
        return price.map(String::valueOf).orElse("");
    }

    static Optional<Long> price(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.matches("\\d{1,15}")) {
            throw new IllegalArgumentException("(%s) is no price.".formatted(text));
        }
        return Optional.of(Long.parseLong(text));
    }

    static Length length(String text) {
        return LengthReader.read(text, Unit.MM)
                .orElseThrow(() -> new IllegalArgumentException("(%s) is no length.".formatted(text)));
    }

    /** Letters, digits and dashes of a title, in small letters: safe as the name of a folder. */
    static String slug(String title, String instead) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(plain.length(), 40)).replaceAll("-$", "");
        return cut.isEmpty() ? instead : cut;
    }
}
