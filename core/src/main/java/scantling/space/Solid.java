package scantling.space;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The wood of one part in space, as convex bodies: its box, cut to its outlines and its slanted ends where it has any,
 * turned where it is turned. For numerical judgement in double millimetres; two plain boxes are compared exactly by their planes instead.
 * An outline that crosses itself counts as the whole rectangle.
 */
public final class Solid {
    /** Closer than this is touching, deeper than this is sharing; millimetres, a tenth of what a bench can make. */
    public static final double TOLERANCE = 0.01;

    private final Box box;
    private final Lie lie;
    private final Form form;
    private @Nullable List<Convex> prisms;
    private @Nullable Extent extent;

    private Solid(Box box, Lie lie, Form form) {
        this.box = box;
        this.lie = lie;
        this.form = form;
    }

    /** Cut when first asked for: most are judged by how far they reach alone. Cut twice by two threads it is the same. */
    private List<Convex> prisms() {
        List<Convex> cut = prisms;
        if (cut == null) {
            cut = new Sawing(box, lie).cut(form);
            prisms = cut;
        }
        return cut;
    }

    /**
     * The solid of a part.
     *
     * @param box not empty
     * @param lie which way its outlines are seen
     * @param form its outlines, its ends and how it is turned
     */
    public static Solid of(Box box, Lie lie, Form form) {
        if (box.isEmpty()) {
            throw new IllegalArgumentException("A box that holds nothing is no solid.");
        }
        return new Solid(box, lie, form);
    }

    /** The solid of a part whose ends are square. @param outline seen on its face side */
    public static Solid of(Box box, Lie lie, Optional<Outline> outline, Optional<Turn> turn) {
        return of(box, lie, new Form(outline, Optional.empty(), Ends.SQUARE, turn));
    }

    /** The flat faces of its convex pieces, each a closed polygon; pieces that meet have a face in common. */
    public List<List<List<Point>>> pieces() {
        return prisms().stream().map(Convex::polygons).toList();
    }

    /** How far it reaches, turned as it is. */
    public Extent extent() {
        Extent known = extent;
        if (known == null) {
            known = form.isPlain() ? Extent.of(box) : around(prisms());
            extent = known;
        }
        return known;
    }

    private static Extent around(List<Convex> prisms) {
        List<Point> ends = new ArrayList<>();
        for (Convex prism : prisms) {
            Extent e = prism.extent();
            ends.add(new Point(e.left(), e.front(), e.bottom()));
            ends.add(new Point(e.right(), e.back(), e.top()));
        }
        return Extent.of(ends);
    }

    /** Its volume in cubic millimetres. */
    public double volume() {
        if (form.isPlain()) {
            Extent e = extent();
            return (e.right() - e.left()) * (e.back() - e.front()) * (e.top() - e.bottom());
        }
        return prisms().stream().mapToDouble(Convex::volume).sum();
    }

    /**
     * How deep the two are in each other, in millimetres: how far one would have to move for its deepest prism to come
     * clear. Zero when they only touch, negative (and no more than the true gap) when they are apart.
     */
    public double depthIn(Solid other) {
        double deepest = Double.NEGATIVE_INFINITY;
        for (Convex mine : prisms()) {
            for (Convex its : other.prisms()) {
                double atMost = mine.extent().depthIn(its.extent());
                if (atMost > deepest) {
                    deepest = Math.max(deepest, Math.min(atMost, mine.depth(its)));
                }
            }
        }
        return deepest;
    }

    /** Whether the two meet: they share space, or no gap beyond the tolerance lies between them. */
    public boolean touches(Solid other) {
        return !extent().isClearOf(other.extent(), TOLERANCE) && depthIn(other) >= -TOLERANCE;
    }

    /** Around the space that both hold, when that is more than touching. */
    public Optional<Extent> findShared(Solid other) {
        if (extent().isClearOf(other.extent(), 0)) {
            return Optional.empty();
        }
        List<Point> corners = new ArrayList<>();
        for (Convex mine : prisms()) {
            for (Convex its : other.prisms()) {
                if (!mine.extent().isClearOf(its.extent(), 0) && mine.depth(its) > TOLERANCE) {
                    corners.addAll(mine.shared(its));
                }
            }
        }
        return corners.isEmpty() ? Optional.empty() : Optional.of(Extent.of(corners));
    }
}
