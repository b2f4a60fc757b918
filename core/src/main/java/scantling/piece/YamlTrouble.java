package scantling.piece;

import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import scantling.measure.Span;

/** Says in the words of a maker why a text cannot be read as keys and values at all. */
final class YamlTrouble {
    private YamlTrouble() {}

    static void report(YamlEngineException broken, Places places, Problems problems) {
        if (broken instanceof ReaderException character) {
            problems.add(
                    places.at(character.getPosition()),
                    "A character that cannot be printed (U+%04X) stands here.".formatted(character.getCodePoint()),
                    "Delete it.");
            return;
        }
        Optional<MarkedYamlEngineException> marked = Optional.of(broken)
                .filter(MarkedYamlEngineException.class::isInstance)
                .map(MarkedYamlEngineException.class::cast);
        Span span = marked.flatMap(YamlTrouble::place).map(places::at).orElseGet(() -> places.at(0));
        String opened = marked.flatMap(
                        m -> Optional.ofNullable(m.getContextMark()).flatMap(mark -> mark))
                .map(mark -> " (it began on line %d)".formatted(mark.getLine() + 1))
                .orElse("");
        Trouble trouble = trouble(String.valueOf(broken.getMessage()).toLowerCase(Locale.ROOT), opened);
        problems.add(span, "%s In: %s".formatted(trouble.message, Problems.quoted(places.line(span))), trouble.remedy);
    }

    private static Optional<Mark> place(MarkedYamlEngineException marked) {
        return Optional.ofNullable(marked.getProblemMark()).flatMap(mark -> mark);
    }

    private record Trouble(String message, String remedy) {}

    private static Trouble trouble(String said, String opened) {
        if (said.contains("\\t") || said.contains("tab")) {
            return new Trouble("A tab stands where the line is indented.", "Indent with spaces.");
        }
        if (said.contains("quoted scalar")) {
            return new Trouble("A quote is opened and not closed" + opened + ".", "Close it on the same line.");
        }
        if (said.contains("flow")) {
            return new Trouble(
                    "A bracket is opened and not closed, or a comma is missing" + opened + ".",
                    "Close every [ with ] and every { with }, with commas between.");
        }
        if (said.contains("mapping values are not allowed")) {
            return new Trouble(
                    "A colon stands where no key can be.",
                    "Begin the line as far in as its neighbours; put text that holds a colon in quotes.");
        }
        return further(said, opened);
    }

    private static Trouble further(String said, String opened) {
        if (said.contains("could not find expected ':'") || said.contains("simple key")) {
            return new Trouble("A colon is missing behind a key" + opened + ".", "Write \"key: value\".");
        }
        if (said.contains("block mapping") || said.contains("block collection") || said.contains("block end")) {
            return new Trouble(
                    "This line is not in line with those before it" + opened + ".",
                    "Indent what belongs together by the same number of spaces.");
        }
        if (said.contains("cannot start any token")) {
            return new Trouble("A value cannot begin with this character.", "Put the value in quotes.");
        }
        return new Trouble(
                "This line cannot be read" + opened + ".",
                "Look for a colon, a quote or a bracket too few or too many.");
    }
}
