// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the records could not tell apart however many scores there were: the combinations of columns that add up to
 * nothing in every record, found by elimination in the table of counts.
 */
final class Aliasing {
    private static final double NOTHING = 1e-9;

    private final double[][] table;
    private final List<Integer> pivots = new ArrayList<>();
    private final List<Integer> free = new ArrayList<>();
    private final int records;
    private final double total;

    private Aliasing(Design design, List<Integer> columns) {
        double[][] products = design.products();
        records = design.records();
        total = products[design.score()][design.score()];
        table = new double[columns.size() + 1][];
        for (int i = 0; i < table.length; i++) {
            int row = i < columns.size() ? columns.get(i) : design.score();
            table[i] = new double[table.length];
            for (int j = 0; j < table.length; j++) {
                table[i][j] = products[row][j < columns.size() ? columns.get(j) : design.score()];
            }
        }
        eliminate();
    }

    static Aliasing of(Design design) {
        return new Aliasing(
                design, IntStream.rangeClosed(0, design.mean()).boxed().toList());
    }

    /** Over these columns of the design only; they are numbered anew, in this order. */
    static Aliasing of(Design design, List<Integer> columns) {
        return new Aliasing(design, columns);
    }

    private void eliminate() {
        int score = table.length - 1;
        double[] before = new double[score];
        for (int k = 0; k < score; k++) {
            before[k] = table[k][k];
        }
        for (int k = 0; k < score; k++) {
            if (table[k][k] > NOTHING * before[k]) {
                pivots.add(k);
                clear(k);
            } else {
                free.add(k);
            }
        }
    }

    private void clear(int pivot) {
        double[] row = table[pivot];
        double by = row[pivot];
        for (int j = 0; j < row.length; j++) {
            row[j] /= by;
        }
        for (int i = 0; i < table.length; i++) {
            double factor = table[i][pivot];
            if (i != pivot && factor != 0) {
                for (int j = 0; j < row.length; j++) {
                    table[i][j] -= factor * row[j];
                }
            }
        }
    }

    int rank() {
        return pivots.size();
    }

    /** No record is left over, or nothing of any score. */
    boolean leavesNothing() {
        return records == rank() || unexplained() <= NOTHING * total;
    }

    /** More records than the levels need, and yet nothing of any score is left over. */
    boolean explainsAll() {
        return records > rank() && unexplained() <= NOTHING * total;
    }

    private double unexplained() {
        int score = table.length - 1;
        return table[score][score];
    }

    /**
     * How much these columns, added, take part in each combination that adds up to nothing. Two sums whose difference
     * takes no part in any can be told apart.
     */
    double[] part(List<Integer> columns) {
        double[] part = new double[free.size()];
        for (int d = 0; d < part.length; d++) {
            for (int column : columns) {
                part[d] += coefficient(column, free.get(d));
            }
        }
        return part;
    }

    private double coefficient(int column, int freeColumn) {
        if (column == freeColumn) {
            return 1;
        }
        return pivots.contains(column) ? -table[column][freeColumn] : 0;
    }
}
