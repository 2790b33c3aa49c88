// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

/**
 * Under what a plant grew, as far as it bears on how long it took. How far each may matter is a judgement of ours, within
 * what was published of it.
 */
public enum Condition {
    /**
     * Weeks of cold, dry ones included. Of daffodils 30 days at 16 C became 21 with 1.7 weeks more (Rees and Hanks,
     * <i>Journal of Horticultural Science</i> 59, 1984, 229-239), of tulips a week more takes off a few days
     * (<i>Acta Horticulturae</i> 68, 1977): a tenth and more of it.
     */
    COLD(0.1, 0.5),
    /**
     * The usual temperature where it came to flower, C. In a room of 17 C with growth from 4.4 C on, a degree is a
     * thirteenth of the time.
     */
    ROOM(0.08, 1),
    /**
     * When it began, in months of 30 days since the season did. A grower's tulips took nearly four weeks in winter and 17
     * to 20 days in summer: a tenth a month and less.
     */
    SEASON(0.08, 1 / 3.0);

    private final double share;
    private final double step;

    Condition(double share, double step) {
        this.share = share;
        this.step = step;
    }

    /** The sd of what one unit more may do, as a share of the length that was published. */
    double share() {
        return share;
    }

    /** As exactly as it can be known: what lies nearer together is the same. */
    double rounded(double value) {
        return Math.rint(value / step) * step;
    }
}
