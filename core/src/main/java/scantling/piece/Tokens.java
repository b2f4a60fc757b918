package scantling.piece;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/** Splits an expression into numbers, lengths, names and signs. */
final class Tokens {
    private static final String NUMBER = "(?:\\d{1,9}(?:\\.\\d{1,10})?|\\.\\d{1,10})";
    private static final String WORD_END = "(?![\\p{L}\\d])";
    private static final String FEET =
            "(?<feet>" + NUMBER + "\\s*(?:'(?!')|\u2032|(?:ft|foot|feet)" + WORD_END + ")(?:\\s*|-)(?=[\\d.]))?";
    private static final String FRACTION = "(?:(?<whole>\\d{1,9})(?:\\s+|-))?(?<num>\\d{1,9})/(?<den>\\d{1,9})(?!\\d)";
    private static final String UNIT = "(?:\\s*(?<unit>(?:mm|millimetres?|cm|m|inch(?:es)?|in|ft|foot|feet)" + WORD_END
            + "|\"|\u2033|\u201d|''|'|\u2032))?";
    private static final Pattern WHOLE_LENGTH = Pattern.compile(
            FEET + "(?:" + FRACTION + "|(?<decimal>" + NUMBER + "))" + UNIT,
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    /** Behind a times or a divided-by, 2-3/4 is a difference and 2/3 two divisions. */
    private static final Pattern SINGLE_NUMBER = Pattern.compile(
            "(?<feet>\\b\\B)?(?<whole>\\b\\B)?(?<num>\\b\\B)?(?<den>\\b\\B)?(?<decimal>" + NUMBER + ")" + UNIT,
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private static final Pattern UNKNOWN_NAME = Pattern.compile("[\\p{L}_][^+*/()\\-]*");
    private static final Pattern LONG_NUMBER = Pattern.compile("\\d{10,}");
    private static final String SIGNS = "+-*/()";

    /** One token. */
    sealed interface Token {
        /** Its text with its place. */
        Phrase phrase();
    }

    /** A number without a unit. */
    record Plain(Rational number, Phrase phrase) implements Token {}

    /** A number with a unit. */
    record Literal(Length length, Phrase phrase) implements Token {}

    /** A known name. */
    record Name(String name, Phrase phrase) implements Token {}

    /** One of + - * / ( ) and the end, a space. */
    record Sign(char sign, Phrase phrase) implements Token {}

    private final Phrase phrase;
    private final String text;
    private final Scope scope;
    private final Problems problems;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Tokens(Phrase phrase, Scope scope, Problems problems) {
        this.phrase = phrase;
        this.text = phrase.text();
        this.scope = scope;
        this.problems = problems;
    }

    /** All tokens and the end; empty when something in it is none, which is then among the problems. */
    static Optional<List<Token>> of(Phrase phrase, Scope scope, Problems problems) {
        return new Tokens(phrase, scope, problems).all();
    }

    private Optional<List<Token>> all() {
        while (at < text.length()) {
            Optional<Token> token = next();
            if (token.isEmpty()) {
                return Optional.empty();
            }
            tokens.add(token.get());
            at = token.get().phrase().to() - phrase.from();
            skipSpace();
        }
        tokens.add(new Sign(' ', phrase.sub(at, at)));
        return Optional.of(tokens);
    }

    private void skipSpace() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private Optional<Token> next() {
        char first = text.charAt(at);
        if (Character.isDigit(first) || first == '.') {
            return number();
        }
        Optional<String> name = scope.longestNameAt(text, at);
        if (name.isPresent()) {
            return Optional.of(
                    new Name(name.get(), phrase.sub(at, at + name.get().length())));
        }
        if (SIGNS.indexOf(first) >= 0) {
            return Optional.of(new Sign(first, phrase.sub(at, at + 1)));
        }
        return unknown();
    }

    private Optional<Token> number() {
        Matcher matcher = (followsFactorSign() ? SINGLE_NUMBER : WHOLE_LENGTH)
                .matcher(text)
                .region(at, text.length());
        Matcher digits = LONG_NUMBER.matcher(text).region(at, text.length());
        if (digits.lookingAt()) {
            Phrase part = phrase.sub(at, digits.end());
            return problems.fail(
                    part.span(), "%s is far too large.".formatted(Problems.quoted(part.text())), "Look at its zeros.");
        }
        if (!matcher.lookingAt()) {
            return unknown();
        }
        Phrase part = phrase.sub(at, matcher.end());
        if ("0".equals(stripZeros(matcher.group("den")))) {
            return problems.fail(
                    part.span(), "A fraction cannot be over zero: " + Problems.quoted(part.text()) + ".", "");
        }
        if (matcher.group("unit") == null && matcher.group("feet") == null) {
            return Optional.of(new Plain(plain(matcher), part));
        }
        Optional<Length> length = LengthReader.read(part.text(), Unit.MM);
        return length.isPresent() ? Optional.of(new Literal(length.get(), part)) : unknown();
    }

    private boolean followsFactorSign() {
        return !tokens.isEmpty()
                && tokens.get(tokens.size() - 1) instanceof Sign sign
                && (sign.sign() == '*' || sign.sign() == '/');
    }

    private static String stripZeros(@org.jspecify.annotations.Nullable String digits) {
        return digits == null ? "" : digits.replaceFirst("^0+(?=\\d)", "");
    }

    private static Rational plain(Matcher matcher) {
        String decimal = matcher.group("decimal");
        if (decimal != null) {
            return Rational.of(new BigDecimal(decimal));
        }
        String whole = matcher.group("whole");
        Rational fraction = Rational.of(new BigDecimal(matcher.group("num")))
                .times(Rational.of(new BigDecimal(matcher.group("den"))).inverse());
        return whole == null ? fraction : Rational.of(new BigDecimal(whole)).plus(fraction);
    }

    private Optional<Token> unknown() {
        Matcher matcher = UNKNOWN_NAME.matcher(text).region(at, text.length());
        boolean word = matcher.lookingAt();
        Phrase part = (word ? phrase.sub(at, matcher.end()) : phrase.sub(at, text.length())).strip();
        if (word && !tokens.isEmpty() && tokens.get(tokens.size() - 1) instanceof Plain) {
            return problems.fail(
                    part.span(),
                    "%s is no unit and no name of a length.".formatted(Problems.quoted(part.text())),
                    "Units: mm, cm, m, in, ft. " + Suggestions.remedy(part.text(), scope.names()));
        }
        return problems.fail(
                part.span(),
                word
                        ? "%s is no length and no name of one.".formatted(Problems.quoted(part.text()))
                        : "%s cannot be read as a length.".formatted(Problems.quoted(part.text())),
                Suggestions.remedy(part.text(), scope.names()));
    }
}
