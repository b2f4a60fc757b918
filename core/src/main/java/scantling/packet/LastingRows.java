package scantling.packet;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.checks.lasting.Moves;
import scantling.checks.lasting.Sags;
import scantling.checks.lasting.Year;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** The tables of what lasts, in words for the pages. */
public final class LastingRows {
    private static final int MOST_NAMED = 3;
    private static final String NONE = "none does";

    private LastingRows() {}

    /**
     * A board that spans.
     *
     * @param name of it, or of those alike
     * @param load what is planned to lie there
     * @param span clear
     * @param sags with its ends lying free, and what is allowed
     * @param held as its joints hold it, and with ends that cannot turn
     * @param years after years, and what the eye does not see
     * @param would the least thickness, the greatest span and the least lipping that keep every rule
     */
    public record Board(String name, String load, String span, String sags, String held, String years, String would) {}

    /** What moves. @param name of it @param width as made @param sawn how @param dry in the driest month @param damp in the dampest @param asks of what holds it */
    public record Move(String name, String width, String sawn, String dry, String damp, String asks) {}

    /** Gaps of what is set in. @param name of it @param months January first, all gaps of one together */
    public record Gap(String name, List<String> months) {
        /** Takes its own copy. */
        public Gap {
            months = List.copyOf(months);
        }
    }

    static List<Board> boards(Assembly assembly, LengthFormat format) {
        return Sags.of(assembly).stream().map(row -> board(row, format)).toList();
    }

    private static Board board(Sags.Row row, LengthFormat format) {
        String held = row.held() < row.free()
                ? "%s as its joints hold it, %s held fast".formatted(say(row.held(), format), say(row.fast(), format))
                : "%s, %s held fast".formatted(row.ends(), say(row.fast(), format));
        return new Board(
                names(row.boards()),
                row.load(),
                format.formatWithUnit(fine(row.span().value(), format)),
                "%s of %s".formatted(say(row.free(), format), say(row.allowed(), format)),
                held,
                "%s of %s".formatted(say(row.years(), format), say(row.seen(), format)),
                "thickness %s, span %s, lipping %s"
                        .formatted(
                                maybe(row.thin(), format), maybe(row.wide(), format), lipping(row.lipping(), format)));
    }

    private static String lipping(OptionalDouble deep, LengthFormat format) {
        return deep.isPresent() ? maybe(deep, format) + " deep" : NONE;
    }

    static List<Move> moves(Assembly assembly, LengthFormat format) {
        return Moves.of(assembly).stream().map(row -> move(row, format)).toList();
    }

    private static Move move(Moves.Row row, LengthFormat format) {
        String asks = row.room()
                .map(room -> "%s of room and %s in the groove at each edge"
                        .formatted(up(room, format), up(row.inside(), format)))
                .orElse("");
        return new Move(
                names(row.boards()),
                format.formatWithUnit(fine(row.moving().part().width().value(), format)),
                row.sawn(),
                signed(Dim.ZERO.minus(row.moving().shrinkage()), format),
                signed(row.moving().growth(), format),
                asks);
    }

    static List<Gap> gaps(Assembly assembly, LengthFormat format) {
        return Year.gaps(assembly).stream()
                .map(curve -> new Gap(
                        curve.words(),
                        curve.each().stream()
                                .map(each -> format.format(fine(each.value(), format)))
                                .toList()))
                .toList();
    }

    private static String names(List<Part> parts) {
        String first = parts.stream().map(Part::path).limit(MOST_NAMED).collect(Collectors.joining(", "));
        return Stream.of(first, parts.size() > MOST_NAMED ? "and %d alike".formatted(parts.size() - MOST_NAMED) : "")
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String signed(Dim change, LengthFormat format) {
        Length rounded = fine(change.value(), format);
        return (rounded.isPositive() ? "+" : "") + format.formatWithUnit(rounded);
    }

    private static String maybe(OptionalDouble mm, LengthFormat format) {
        return mm.isPresent() ? say(mm.getAsDouble(), format) : NONE;
    }

    private static String say(double mm, LengthFormat format) {
        return format.formatWithUnit(fine(Length.ofMillimetres(mm), format));
    }

    private static String up(double mm, LengthFormat format) {
        return format.formatWithUnit(
                Length.ofMillimetres(mm).roundedUpTo(format.inches() ? Length.inches(1, 64) : Length.mm("0.1")));
    }

    private static Length fine(Length length, LengthFormat format) {
        return length.roundedTo(format.inches() ? Length.inches(1, 64) : Length.mm("0.1"));
    }
}
