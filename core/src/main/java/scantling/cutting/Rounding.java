package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A dual feasible function of sizes up to a whole: whatever sizes add up to at most the whole, their values add up to at most
 * one. Three families: the size itself; sizes above whole - e count as all and below e as nothing (Martello and Toth 1990);
 * sizes rounded down to a multiple of the whole over k + 1 (Fekete and Schepers 2001); and multiples of a length counted,
 * mirrored about the middle (Carlier, Clautiaux and Moukrim 2007).
 */
record Rounding(Kind kind, long whole, long parameter) {
    enum Kind {
        PLAIN,
        THRESHOLD,
        STEPS,
        MIRRORED
    }

    static List<Rounding> all(long whole, TreeSet<Long> sizes, int most) {
        List<Rounding> all = new ArrayList<>();
        all.add(new Rounding(Kind.PLAIN, whole, 0));
        for (long k = 1; k <= 6; k++) {
            all.add(new Rounding(Kind.STEPS, whole, k));
        }
        TreeSet<Long> parameters = new TreeSet<>();
        for (long size : sizes) {
            parameters.add(Math.min(size, whole - size + 1));
            parameters.add(Math.min(size, whole - size));
        }
        List<Long> usable =
                parameters.stream().filter(p -> p > 0 && 2 * p <= whole).toList();
        int stride = 1 + usable.size() * 2 / most;
        for (int i = 0; i < usable.size(); i += stride) {
            all.add(new Rounding(Kind.THRESHOLD, whole, usable.get(i)));
            all.add(new Rounding(Kind.MIRRORED, whole, usable.get(i)));
        }
        return all;
    }

    double[] of(long[] sizes) {
        double[] values = new double[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            values[i] = sizes[i] > whole ? Double.POSITIVE_INFINITY : of(sizes[i]);
        }
        return values;
    }

    private double of(long size) {
        return switch (kind) {
            case PLAIN -> size / (double) whole;
            case THRESHOLD -> size > whole - parameter ? 1 : size < parameter ? 0 : size / (double) whole;
            case STEPS -> steps(size);
            case MIRRORED -> mirrored(size);
        };
    }

    private double steps(long size) {
        long product = size * (parameter + 1);
        return product % whole == 0 ? size / (double) whole : Math.floorDiv(product, whole) / (double) parameter;
    }

    private double mirrored(long size) {
        long half = whole / parameter;
        if (2 * size > whole) {
            return (half - (whole - size) / parameter) / (double) half;
        }
        return 2 * size == whole ? 0.5 : (size / parameter) / (double) half;
    }
}
