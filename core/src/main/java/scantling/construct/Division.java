package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Portion;
import scantling.piece.Shape;
import scantling.space.Box;
import scantling.space.Side;

/**
 * Divides a space in one direction into spaces of fixed sizes and shares. Each begins where what stands before it ends,
 * so that a measured divider moves those after it; the last takes what is left.
 *
 * @param from the side that is counted from
 * @param word what one of them is called
 */
record Division(Side from, String word) {
    private static final Shape SPACE = Shape.of(
            "space",
            "One of the spaces, in order.",
            Field.optional("build", Field.Kind.STEPS, "What is built in it.", "[{shelves: {of: ply, count: 2}}]"));

    /** The fields that rows and columns share. */
    List<Field> fields(String order) {
        return List.of(
                Field.required("sizes", Field.Kind.PORTIONS, "Their sizes, " + order + ".", "[300 mm, rest]"),
                Field.usual(
                        "gap", Field.Kind.LENGTH, "0 mm", "common practice", "The air between them with no divider."),
                Butting.field("How the ends of what divides them meet their neighbours."),
                Field.optional("housed", Field.Kind.LENGTH, "How deep those ends are let in.", "6 mm"),
                Field.usual("set back", Field.Kind.LENGTH, "0 mm", "common practice", "How far dividers stand back."),
                Field.part("spaces", Field.Kind.PARTS, SPACE, "What each is called and holds.", "[{name: left}]"),
                Field.optional(
                        "each",
                        Field.Kind.STEPS,
                        "What is built in every one, beside its own.",
                        "[doors: {count: 1}]"));
    }

    /** Divides and builds. @param between the thickness of what divides, as planned @param divider builds one in its place */
    Box build(Element element, Site site, Dim between, Optional<Function<Box, Part>> divider) {
        List<Dim> sizes = sizes(element, site, between);
        Box left = site.space();
        List<Box> spaces = new ArrayList<>();
        for (int i = 0; i < sizes.size() - 1; i++) {
            Box space = left.slab(from, sizes.get(i));
            spaces.add(space);
            left = left.inset(from, sizes.get(i));
            Box rest = left;
            left = divider.map(build -> build.apply(rest.slab(from, between)))
                    .map(part -> rest.with(from, part.box().plane(from.opposite())))
                    .orElseGet(() -> rest.inset(from, between));
        }
        spaces.add(left);
        fill(element, site, spaces);
        return site.space();
    }

    private void fill(Element element, Site site, List<Box> spaces) {
        List<Element> said = element.parts("spaces");
        if (said.size() > spaces.size()) {
            site.problem(
                    element.span(),
                    "(%d) spaces are described, but the sizes make only (%d).".formatted(said.size(), spaces.size()),
                    "Give as many sizes as there are spaces.");
        }
        for (int i = 0; i < spaces.size(); i++) {
            Optional<Element> one = i < said.size() ? Optional.of(said.get(i)) : Optional.empty();
            String name = one.map(Element::name)
                    .filter(own -> !own.equals(SPACE.key()))
                    .orElse(word + " " + (i + 1));
            if (!spaces.get(i).isEmpty()) {
                Site inside = site.inside(name, spaces.get(i));
                inside.opening("opening", spaces.get(i));
                List<Element> steps = new ArrayList<>(element.parts("each"));
                one.ifPresent(space -> steps.addAll(space.parts("build")));
                inside.buildAll(steps);
            }
        }
    }

    private List<Dim> sizes(Element element, Site site, Dim between) {
        List<Portion> portions = element.portions("sizes");
        Dim free = site.space().extent(from.axis()).minus(between.times(portions.size() - 1L));
        long shares = 0;
        for (Portion portion : portions) {
            if (portion instanceof Portion.Fixed fixed) {
                free = free.minus(fixed.size());
            } else if (portion instanceof Portion.Shares several) {
                shares += several.count();
            }
        }
        check(element, site, free, shares);
        List<Dim> sizes = new ArrayList<>();
        for (Portion portion : portions) {
            sizes.add(size(portion, free, shares));
        }
        return sizes;
    }

    private static Dim size(Portion portion, Dim free, long shares) {
        return portion instanceof Portion.Fixed fixed
                ? fixed.size()
                : free.share(((Portion.Shares) portion).count(), shares);
    }

    private void check(Element element, Site site, Dim free, long shares) {
        Length left = free.value();
        LengthFormat format = LengthFormat.of(site.piece().unit());
        String extent = format.formatWithUnit(site.space().extent(from.axis()).value());
        if (shares > 0 ? !left.isPositive() : left.isNegative()) {
            site.problem(
                    element.span(),
                    "The %ss need (%s) more than the (%s) there is."
                            .formatted(word, format.formatWithUnit(left.negated()), extent),
                    "Make them smaller, or one of them 'rest'.");
        } else if (shares == 0 && left.isPositive()) {
            site.problem(
                    element.span(),
                    "The %ss leave (%s) of the (%s) there is.".formatted(word, format.formatWithUnit(left), extent),
                    "Make one of them 'rest'.");
        }
    }
}
