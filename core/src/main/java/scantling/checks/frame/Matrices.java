package scantling.checks.frame;

/** Small dense matrices. */
final class Matrices {
    private Matrices() {}

    static double[] times(double[][] matrix, double[] vector) {
        double[] result = new double[matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                result[i] += matrix[i][j] * vector[j];
            }
        }
        return result;
    }

    /** The stiffness seen through a change of coordinates: transposed(by) * stiffness * by. */
    static double[][] seenThrough(double[][] stiffness, double[][] by) {
        int inner = stiffness.length;
        int outer = by[0].length;
        double[][] half = new double[inner][outer];
        for (int i = 0; i < inner; i++) {
            for (int k = 0; k < inner; k++) {
                if (stiffness[i][k] != 0) {
                    for (int j = 0; j < outer; j++) {
                        half[i][j] += stiffness[i][k] * by[k][j];
                    }
                }
            }
        }
        double[][] result = new double[outer][outer];
        for (int k = 0; k < inner; k++) {
            for (int i = 0; i < outer; i++) {
                if (by[k][i] != 0) {
                    for (int j = 0; j < outer; j++) {
                        result[i][j] += by[k][i] * half[k][j];
                    }
                }
            }
        }
        return result;
    }

    /** How a point that is held fast to a node moves with it: shift plus turn times arm; turns are the node's. */
    static void carry(double[][] into, int row, int column, Vector arm, double sign) {
        for (int i = 0; i < Member.FREEDOMS; i++) {
            into[row + i][column + i] += sign;
        }
        into[row][column + 4] += sign * arm.up();
        into[row][column + 5] -= sign * arm.deep();
        into[row + 1][column + 3] -= sign * arm.up();
        into[row + 1][column + 5] += sign * arm.across();
        into[row + 2][column + 3] += sign * arm.deep();
        into[row + 2][column + 4] -= sign * arm.across();
    }
}
