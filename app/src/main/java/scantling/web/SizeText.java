package scantling.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.measure.Span;
import scantling.piece.PieceEditor;

/**
 * The sizes over all and the materials in the text of a piece, as short forms ask for them. Only the asked values change.
 *
 * @param text of the piece
 */
public record SizeText(String text) {
    private static final List<String> OVER_ALL = List.of("width", "depth", "height");
    private static final String MATERIALS = "materials / ";

    /** A value that the text gives. @param name how the form calls it @param value as written */
    public record Field(String name, String value) {}

    /**
     * A material.
     *
     * @param name the maker's own
     * @param kind solid or sheet, as the text says it; empty for another kind
     * @param of which wood or sheet
     * @param thickness as written
     */
    public record Material(String name, String kind, String of, String thickness) {}

    /** Width, depth and height, as far as the text gives them. */
    public List<Field> overAll() {
        return OVER_ALL.stream()
                .flatMap(name -> find("size / " + name).map(value -> new Field(name, value)).stream())
                .toList();
    }

    /** All materials, in the order of the text. */
    public List<Material> materials() {
        List<Material> materials = new ArrayList<>();
        for (String name : TextAsk.materials(givens())) {
            String path = MATERIALS + name + " / ";
            String kind = find(path + "solid").isPresent()
                    ? "solid"
                    : find(path + "sheet").isPresent() ? "sheet" : "";
            materials.add(new Material(
                    name,
                    kind,
                    find(path + kind).orElse(""),
                    find(path + "thickness").orElse("")));
        }
        return materials;
    }

    /** How thick a material is; empty when nobody has said. */
    public String thickness(String material) {
        return find(MATERIALS + material + " / thickness").orElse("");
    }

    private List<PieceEditor.Given> givens() {
        return PieceEditor.givens(text, Construction.language());
    }

    private Optional<String> find(String path) {
        return givens().stream()
                .filter(given -> given.path().equals(path))
                .map(PieceEditor.Given::value)
                .findFirst();
    }

    /** The text with another value in place of a given one; the same when it is left empty or not given. */
    SizeText with(String path, String value) {
        Optional<Span> span = PieceEditor.findSpan(text, Construction.language(), path);
        return value.isEmpty()
                        || span.isEmpty()
                        || find(path).filter(value::equals).isPresent()
                ? this
                : new SizeText(text.substring(0, span.get().start())
                        + value
                        + text.substring(span.get().end()));
    }

    SizeText withOverAll(String name, String value) {
        return OVER_ALL.contains(name) ? with("size / " + name, value) : this;
    }

    SizeText withMaterial(String name, String of, String thickness) {
        String path = MATERIALS + name + " / ";
        return with(path + "solid", of).with(path + "sheet", of).with(path + "thickness", thickness);
    }

    /**
     * The top in another thickness: its material where nothing else is made of it, else a material of its own.
     *
     * @return empty when the text has no place for one
     */
    Optional<String> withTopThickness(String material, String thickness) {
        if (thickness.isEmpty() || thickness.equals(thickness(material))) {
            return Optional.of(text);
        }
        if (uses(material) <= 1) {
            return Optional.of(
                    with(MATERIALS + material + " / thickness", thickness).text());
        }
        return withCopy(material, thickness);
    }

    private long uses(String material) {
        Pattern word = Pattern.compile("(?<![\\p{L}\\d-])" + Pattern.quote(material) + "(?![\\p{L}\\d-])");
        return givens().stream()
                .filter(given -> !given.path().startsWith(MATERIALS)
                        && !given.path().startsWith("finish")
                        && word.matcher(given.value()).find())
                .map(given -> given.span().line() + " " + given.span().start())
                .distinct()
                .count();
    }

    /** A material is copied when it stands on one line: {@code oak: {solid: white oak, thickness: 20}}. */
    private Optional<String> withCopy(String material, String thickness) {
        Matcher line = Pattern.compile(
                        "(?m)^( +)" + Pattern.quote(material) + ":[ \\t]*(\\{[^}\\n]*\\})[^\\n]*(?:\\n|\\z)")
                .matcher(text);
        if (!line.find()) {
            return Optional.empty();
        }
        String name = free();
        String body = line.group(2)
                .replaceAll(",\\s*measured:[^,}]*", "")
                .replaceAll("thickness:\\s*[^,}]*", Matcher.quoteReplacement("thickness: " + thickness));
        String head = text.substring(0, line.end());
        String copy = (head.endsWith("\n") ? "" : "\n") + line.group(1) + name + ": " + body + "\n";
        return Optional.of(new TopText(head + copy + text.substring(line.end()))
                .with("of", name)
                .text());
    }

    private String free() {
        List<String> taken = TextAsk.materials(givens());
        String name = "top board";
        for (int n = 2; taken.contains(name); n++) {
            name = "top board " + n;
        }
        return name;
    }
}
