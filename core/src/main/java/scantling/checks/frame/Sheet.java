package scantling.checks.frame;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.space.Axis;

/**
 * A sheet that braces what it is held by: it resists only being pushed out of square (pure shear, constant over the
 * sheet). Its four corners are held fast to nodes by stiff arms.
 *
 * @param part path of the sheet
 * @param corners in order round: near-near, far-near, far-far, near-far
 * @param first one direction of its plane
 * @param second the other
 * @param firstSize mm along the first
 * @param secondSize mm along the second
 * @param stiff G t, N/mm
 */
record Sheet(
        String part, List<Corner> corners, Axis first, Axis second, double firstSize, double secondSize, double stiff)
        implements Member {
    /** One corner. @param node that holds it @param arm from the node to the corner */
    record Corner(int node, Vector arm) {}

    Sheet {
        corners = List.copyOf(corners);
    }

    private Map<Integer, Integer> places() {
        Map<Integer, Integer> places = new LinkedHashMap<>();
        corners.forEach(corner -> places.putIfAbsent(corner.node(), places.size()));
        return places;
    }

    @Override
    public int[] nodes() {
        return places().keySet().stream().mapToInt(Integer::intValue).toArray();
    }

    @Override
    public double[][] stiffness() {
        double[] skew = skew();
        double energy = stiff * firstSize * secondSize;
        double[][] k = new double[skew.length][skew.length];
        for (int i = 0; i < skew.length; i++) {
            for (int j = 0; j < skew.length; j++) {
                k[i][j] = energy * skew[i] * skew[j];
            }
        }
        return k;
    }

    /** The angle out of square for a unit of each movement of its nodes. */
    private double[] skew() {
        Map<Integer, Integer> places = places();
        double[] skew = new double[places.size() * FREEDOMS];
        for (int i = 0; i < corners.size(); i++) {
            Corner corner = corners.get(i);
            int at = places.getOrDefault(corner.node(), 0) * FREEDOMS;
            boolean farFirst = i == 1 || i == 2;
            boolean farSecond = i >= 2;
            add(skew, at, corner.arm(), first, (farSecond ? 0.5 : -0.5) / secondSize);
            add(skew, at, corner.arm(), second, (farFirst ? 0.5 : -0.5) / firstSize);
        }
        return skew;
    }

    private static void add(double[] skew, int at, Vector arm, Axis axis, double factor) {
        double[][] carried = new double[FREEDOMS][FREEDOMS];
        Matrices.carry(carried, 0, 0, arm, 1);
        double[] row = carried[axis.ordinal()];
        for (int i = 0; i < FREEDOMS; i++) {
            skew[at + i] += factor * row[i];
        }
    }

    /** How far out of square it is pushed, radians. @param moved movements of its nodes */
    double outOfSquare(double[] moved) {
        double[] skew = skew();
        double sum = 0;
        for (int i = 0; i < skew.length; i++) {
            sum += skew[i] * moved[i];
        }
        return sum;
    }

    @Override
    public String toString() {
        return part + Arrays.toString(nodes());
    }
}
