package scantling.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import scantling.construct.Construction;
import scantling.piece.Field;
import scantling.piece.MaterialWords;
import scantling.piece.Shape;
import scantling.piece.Woods;
import scantling.plan.StandardWoods;

/** What may stand at a place in the text of a piece, from the list of elements and the names the maker gave. */
final class Completion {
    private static final int MOST = 12;
    private static final Woods WOODS = StandardWoods.standard();
    private static final List<String> TOP =
            List.of("piece", "for", "unit", "size", "lengths", "materials", "build", "sizes", "finish", "matched");
    private static final List<String> LISTS_OF_ELEMENTS = List.of("build", "each", "spaces");
    private static final Pattern KEY = Pattern.compile("(?:^|[-{,]\\s*)([\\p{L}][\\p{L}\\d ]*):\\s*$");
    private static final Pattern LAST_WORD = Pattern.compile("([\\p{L}][\\p{L}\\d -]*)?$");

    private static final Pattern NAME = Pattern.compile("^ +([\\p{L}][\\p{L}\\d_' ]*):");

    private Completion() {}

    /** Something that may stand there. @param word what @param says what it means @param typed how much of it is there already */
    record Offer(String word, String says, int typed) {}

    /** What may stand at an offset, at most twelve. */
    static List<Offer> of(String text, int at) {
        String line = text.substring(text.lastIndexOf('\n', Math.max(0, at - 1)) + 1, at);
        Matcher word = LAST_WORD.matcher(line);
        String typed = word.find() && word.group(1) != null ? word.group(1) : "";
        String before = line.substring(0, line.length() - typed.length());
        Matcher key = KEY.matcher(before);
        Map<String, String> offers =
                key.find() ? values(text, key.group(1).strip()) : keys(text.substring(0, at - line.length()), before);
        return offers.entrySet().stream()
                .filter(offer -> offer.getKey().toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT)))
                .filter(offer -> !offer.getKey().equals(typed))
                .limit(MOST)
                .map(offer -> new Offer(offer.getKey(), offer.getValue(), typed.length()))
                .toList();
    }

    private static Stream<Shape> shapes() {
        return Construction.language().elements().stream().flatMap(Completion::within);
    }

    /** A shape and those of its fields. */
    private static Stream<Shape> within(Shape shape) {
        return Stream.concat(
                Stream.of(shape),
                shape.fields().stream().flatMap(field -> field.shape().stream().flatMap(Completion::within)));
    }

    private static Map<String, String> values(String text, String key) {
        Map<String, String> offers = new LinkedHashMap<>();
        shapes().flatMap(shape -> shape.fields().stream())
                .filter(field -> field.key().equals(key))
                .forEach(field -> {
                    field.choices().forEach(choice -> offers.put(choice, field.says()));
                    if (field.kind() == Field.Kind.STOCK) {
                        names(text, "materials").forEach(name -> offers.putIfAbsent(name, "a material"));
                    } else if (field.kind() == Field.Kind.FLAG) {
                        List.of("yes", "no").forEach(flag -> offers.put(flag, field.says()));
                    } else if (field.kind() == Field.Kind.LENGTH) {
                        names(text, "lengths").forEach(name -> offers.putIfAbsent(name, "a length"));
                    }
                });
        if (key.equals("solid")) {
            WOODS.solids().forEach(wood -> offers.put(wood, "a wood"));
        } else if (key.equals("sheet")) {
            WOODS.sheets().forEach(sheet -> offers.put(sheet, "sold in sheets"));
        } else if (key.equals("unit")) {
            List.of("mm", "cm", "in").forEach(unit -> offers.put(unit, "unit of lengths that name none"));
        }
        Construction.language()
                .find(key)
                .filter(shape -> shape.shortField().isPresent())
                .ifPresent(shape -> names(text, "materials").forEach(name -> offers.putIfAbsent(name, "a material")));
        return offers;
    }

    /** The maker's names under a key of the description; read line by line, for a text in the making seldom reads as a whole. */
    private static List<String> names(String text, String under) {
        List<String> names = new ArrayList<>();
        boolean inside = false;
        for (String line : text.lines().toList()) {
            if (indent(line) == 0 && !line.isBlank()) {
                inside = line.startsWith(under + ":");
            } else if (inside) {
                Matcher name = NAME.matcher(line);
                if (name.find()) {
                    names.add(name.group(1));
                }
            }
        }
        return names;
    }

    private static Map<String, String> keys(String above, String before) {
        Map<String, String> offers = new LinkedHashMap<>();
        Optional<String> holder = holder(above, before);
        if (holder.isEmpty()) {
            TOP.forEach(key -> offers.put(key + ": ", "of the whole piece"));
        } else if (LISTS_OF_ELEMENTS.contains(holder.get())) {
            Construction.language().elements().forEach(shape -> offers.put(shape.key() + ": ", shape.says()));
        } else {
            boolean material = names(above + before, "materials").contains(holder.get());
            MaterialWords.inside(holder.get(), material).forEach((key, says) -> offers.put(key + ": ", says));
            shapes().filter(shape -> shape.key().equals(holder.get()))
                    .flatMap(shape -> shape.fields().stream())
                    .forEach(field -> offers.put(field.key() + ": ", field.says()));
            if (offers.isEmpty()) {
                shapes().flatMap(shape -> shape.fields().stream())
                        .filter(field -> field.key().equals(holder.get()))
                        .flatMap(field -> field.shape().stream())
                        .flatMap(shape -> shape.fields().stream())
                        .forEach(field -> offers.put(field.key() + ": ", field.says()));
            }
        }
        return offers;
    }

    /** The key in whose value the place stands: the last open brace's, else that of a line further left. */
    private static Optional<String> holder(String above, String before) {
        int depth = 0;
        for (int i = before.length() - 1; i >= 0; i--) {
            char c = before.charAt(i);
            depth += c == '}' ? 1 : c == '{' ? -1 : 0;
            if (depth < 0) {
                Optional<String> key = keyBefore(before.substring(0, i));
                if (key.isPresent()) {
                    return key;
                }
                break;
            }
        }
        int indent = indent(before);
        if (indent == 0) {
            return Optional.empty();
        }
        List<String> lines = new ArrayList<>(above.lines().toList());
        for (int i = lines.size() - 1; i >= 0; i--) {
            String line = lines.get(i);
            String clean = line.replaceFirst("#.*$", "").stripTrailing();
            if (!clean.isBlank() && keyIndent(clean) < indent && clean.endsWith(":")) {
                return keyBefore(clean);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> keyBefore(String text) {
        Matcher key = KEY.matcher(text.strip() + (text.strip().endsWith(":") ? "" : ":"));
        return key.find() ? Optional.of(key.group(1).strip()) : Optional.empty();
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** Where the key of a line stands, behind the dash of a list. */
    private static int keyIndent(String line) {
        String rest = line.stripLeading();
        int indent = indent(line);
        return rest.startsWith("- ") ? indent + 1 : indent;
    }
}
