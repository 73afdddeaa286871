package org.snugsheet.engine.slips;

/** Small systems of linear equations with a symmetric matrix, as least squares for a handful of unknowns has them. */
final class Linear {

    private static final double NOTHING = 1e-12;

    private Linear() {}

    /**
     * Inverts a symmetric positive matrix by Gauss and Jordan.
     *
     * @param matrix the matrix; it is overwritten
     * @return the inverse, or an empty array if the matrix has none worth the name
     */
    static double[][] inverse(double[][] matrix) {
        int m = matrix.length;
        double[] size = new double[m];
        double[][] inverse = new double[m][m];
        for (int i = 0; i < m; i++) {
            size[i] = matrix[i][i];
            inverse[i][i] = 1;
        }
        for (int i = 0; i < m; i++) {
            double pivot = matrix[i][i];
            if (!(pivot > NOTHING * size[i])) {
                return new double[0][];
            }
            for (int j = 0; j < m; j++) {
                matrix[i][j] /= pivot;
                inverse[i][j] /= pivot;
            }
            for (int k = 0; k < m; k++) {
                double factor = matrix[k][i];
                if (k != i && factor != 0) {
                    for (int j = 0; j < m; j++) {
                        matrix[k][j] -= factor * matrix[i][j];
                        inverse[k][j] -= factor * inverse[i][j];
                    }
                }
            }
        }
        return inverse;
    }

    static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[matrix.length];
        for (int i = 0; i < product.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                product[i] += matrix[i][j] * vector[j];
            }
        }
        return product;
    }
}
