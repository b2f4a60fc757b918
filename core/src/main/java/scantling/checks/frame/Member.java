package scantling.checks.frame;

/** Something that resists movement of the nodes it holds: a small stiffness over their six movements each. */
sealed interface Member permits Bar, Link, Sheet {
    /** Movements of a node: three shifts along the directions of the piece, then three turns about them. */
    int FREEDOMS = 6;

    /** The nodes it holds, each once. */
    int[] nodes();

    /** Stiffness in the directions of the piece, N, mm and radians; symmetric, six rows for each node. */
    double[][] stiffness();

    /** Forces and moments that its nodes put on it, six for each node. @param moved movements of its nodes */
    default double[] forces(double[] moved) {
        return Matrices.times(stiffness(), moved);
    }
}
