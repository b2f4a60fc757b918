package scantling.checks.frame;

/**
 * A stretch of a part between two nodes on its middle line: a beam in space with shear (Timoshenko), 12 movements. See
 * docs/method/frame.md.
 *
 * @param part path of the part
 * @param from node at its first end
 * @param to node at its second end
 * @param start where the first is
 * @param end where the second is
 * @param width direction of its width
 * @param profile of its section
 */
record Bar(String part, int from, int to, Vector start, Vector end, Vector width, Profile profile) implements Member {
    @Override
    public int[] nodes() {
        return new int[] {from, to};
    }

    @Override
    public double[][] stiffness() {
        return Matrices.seenThrough(own(), turned());
    }

    /** In its own directions: along, width, depth. */
    private double[][] own() {
        double length = end.minus(start).length();
        double[][] k = new double[12][12];
        pair(k, 0, profile.axial() / length);
        pair(k, 3, profile.twist() / length);
        bend(k, 1, 5, 1, profile.upright(), length);
        bend(k, 2, 4, -1, profile.flat(), length);
        return k;
    }

    private static void pair(double[][] k, int at, double stiff) {
        k[at][at] = stiff;
        k[at + 6][at + 6] = stiff;
        k[at][at + 6] = -stiff;
        k[at + 6][at] = -stiff;
    }

    private void bend(double[][] k, int shift, int turn, int sign, double bending, double length) {
        double give = 12 * bending / (profile.shear() * length * length);
        double unit = bending / (1 + give) / (length * length * length);
        int[] at = {shift, turn, shift + 6, turn + 6};
        double mixed = sign * 6 * length;
        double near = (4 + give) * length * length;
        double far = (2 - give) * length * length;
        double[][] rows = {
            {12, mixed, -12, mixed}, {mixed, near, -mixed, far}, {-12, -mixed, 12, -mixed}, {mixed, far, -mixed, near}
        };
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                k[at[i]][at[j]] = unit * rows[i][j];
            }
        }
    }

    private double[][] turned() {
        Vector along = end.minus(start).unit();
        Vector depth = along.cross(width).unit();
        Vector wide = depth.cross(along);
        double[][] by = new double[12][12];
        for (int block = 0; block < 12; block += 3) {
            row(by[block], block, along);
            row(by[block + 1], block, wide);
            row(by[block + 2], block, depth);
        }
        return by;
    }

    private static void row(double[] row, int at, Vector direction) {
        row[at] = direction.across();
        row[at + 1] = direction.deep();
        row[at + 2] = direction.up();
    }
}
