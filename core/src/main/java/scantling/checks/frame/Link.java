package scantling.checks.frame;

/**
 * A joint: two nodes, each with a stiff arm to the place of the joint, and springs between the ends of the arms.
 *
 * @param joint path of the joint
 * @param first node in the part that enters
 * @param second node in the part that receives
 * @param firstArm from the first node to the joint
 * @param secondArm from the second node to the joint
 * @param shift stiffness of shifting along the three directions of the piece, N/mm
 * @param turn stiffness of turning about them, N mm
 */
record Link(String joint, int first, int second, Vector firstArm, Vector secondArm, Vector shift, Vector turn)
        implements Member {
    @Override
    public int[] nodes() {
        return new int[] {first, second};
    }

    @Override
    public double[][] stiffness() {
        return Matrices.seenThrough(springs(), across());
    }

    private double[][] springs() {
        double[] each = {shift.across(), shift.deep(), shift.up(), turn.across(), turn.deep(), turn.up()};
        double[][] springs = new double[FREEDOMS][FREEDOMS];
        for (int i = 0; i < FREEDOMS; i++) {
            springs[i][i] = each[i];
        }
        return springs;
    }

    /** Movement of the second end of the joint less that of the first. */
    private double[][] across() {
        double[][] by = new double[FREEDOMS][2 * FREEDOMS];
        Matrices.carry(by, 0, 0, firstArm, -1);
        Matrices.carry(by, 0, FREEDOMS, secondArm, 1);
        return by;
    }

    /** Force and moment that pass through the joint, in the directions of the piece. @param moved of both nodes */
    Passing passing(double[] moved) {
        double[] gap = Matrices.times(across(), moved);
        return new Passing(
                new Vector(gap[0] * shift.across(), gap[1] * shift.deep(), gap[2] * shift.up()),
                new Vector(gap[3] * turn.across(), gap[4] * turn.deep(), gap[5] * turn.up()));
    }

    /** What passes through a joint. @param force N @param moment N mm, at the joint */
    record Passing(Vector force, Vector moment) {}
}
