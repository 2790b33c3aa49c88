// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * The triangle R with R'R = A (Cholesky), for an A that is mostly empty where it begins: a cell that is empty costs
 * nothing.
 */
final class Triangle {
    private final double[][] rows;

    private Triangle(double[][] rows) {
        this.rows = rows;
    }

    /** @param table symmetric, without negative roots; it is overwritten */
    static Triangle of(double[][] table) {
        for (int k = 0; k < table.length; k++) {
            double[] row = table[k];
            // Rounding may leave less than nothing of what the rows above explain wholly.
            row[k] = Math.sqrt(Math.max(row[k], 0));
            for (int j = k + 1; j < row.length; j++) {
                row[j] /= row[k];
            }
            for (int i = k + 1; i < row.length; i++) {
                takeOff(table[i], row, row[i], i);
            }
        }
        return new Triangle(table);
    }

    private static void takeOff(double[] from, double[] row, double factor, int start) {
        if (factor != 0) {
            for (int j = start; j < row.length; j++) {
                from[j] -= factor * row[j];
            }
        }
    }

    double at(int row, int column) {
        return rows[row][column];
    }

    double logOfDiagonal(int endExclusive) {
        double sum = 0;
        for (int k = 0; k < endExclusive; k++) {
            sum += Math.log(rows[k][k]);
        }
        return sum;
    }

    /** The t with R't = b, over b's length; b is overwritten. */
    double[] forward(double[] b) {
        for (int k = 0; k < b.length; k++) {
            if (b[k] != 0) {
                b[k] /= rows[k][k];
                for (int i = k + 1; i < b.length; i++) {
                    b[i] -= rows[k][i] * b[k];
                }
            }
        }
        return b;
    }
}
