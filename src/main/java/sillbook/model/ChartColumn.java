// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * What the readings of a place come to over one column of a chart, put right for its thermometer.
 *
 * @param column counted from 0
 * @param lowest in thousandths of a degree, like the others
 */
public record ChartColumn(int column, int lowest, int mean, int highest) {
    public ChartColumn {
        if (lowest > mean || mean > highest) {
            throw new IllegalArgumentException("no column: " + lowest + ", " + mean + ", " + highest);
        }
    }
}
