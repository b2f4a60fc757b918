package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.drawing.Drawing;
import scantling.drawing.Laid;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/** Templates that are one and the same on paper: printed once, with the marks of all parts and all places they are for. */
final class AlikeTemplates {
    private static final int MOST_PLACES = 6;
    private static final int MOST_MARKS = 8;

    private final LengthFormat format;
    private final Map<String, List<Template>> alike = new LinkedHashMap<>();

    AlikeTemplates(LengthFormat format) {
        this.format = format;
    }

    /** A template with the mark of its parts. */
    private record Template(String mark, Laid laid) {}

    /** @param kind what it is for; templates for different things are never one */
    void add(String mark, String kind, Laid laid) {
        alike.computeIfAbsent(kind + " " + laid.likeness(), key -> new ArrayList<>())
                .add(new Template(mark, laid));
    }

    /** Each once. */
    List<Drawing> shared() {
        return alike.values().stream().map(this::one).toList();
    }

    private Drawing one(List<Template> same) {
        Template first = same.get(0);
        Drawing drawing = first.laid().drawing();
        String marks = same.stream().map(Template::mark).distinct().collect(Collectors.joining(", "));
        return drawing.called(marks + drawing.title().substring(first.mark().length()) + others(same));
    }

    /** Where else along the parts the same stands, mark by mark. */
    private String others(List<Template> same) {
        Map<String, List<Dim>> places = new LinkedHashMap<>();
        same.stream()
                .skip(1)
                .forEach(template -> template.laid()
                        .from()
                        .ifPresent(from -> places.computeIfAbsent(template.mark(), key -> new ArrayList<>())
                                .add(from)));
        Stream<String> told = places.entrySet().stream()
                .limit(MOST_MARKS)
                .map(entry -> "; %s also from %s".formatted(entry.getKey(), distances(entry.getValue())));
        Optional<String> rest = Optional.of("; others as their strips say").filter(more -> places.size() > MOST_MARKS);
        return Stream.concat(told, rest.stream()).collect(Collectors.joining());
    }

    private String distances(List<Dim> dims) {
        List<String> all =
                dims.stream().map(dim -> format.format(dim.value())).distinct().toList();
        String first = String.join(", ", all.subList(0, Math.min(all.size(), MOST_PLACES)));
        String unit = format.inches() ? " in" : " mm";
        return all.size() > MOST_PLACES
                ? "%s%s and %d more places".formatted(first, unit, all.size() - MOST_PLACES)
                : first + unit;
    }
}
