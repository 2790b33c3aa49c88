// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

/**
 * Days at one place that are known in one way, and what counts of them as cold. All in days.
 *
 * @param least what counts at least
 * @param likely what is taken to count
 * @param most what counts at most
 */
public record ColdPart(Basis basis, double days, double least, double likely, double most) {

    /** How a day is known, in the order of trust. */
    public enum Basis {
        /** Thermometers say how warm every hour was. */
        READ,
        /** Only the lowest and highest of several days are known: what counts is bounded, and the middle between them speaks. */
        BETWEEN,
        /** Nothing was read: the place's cold days are taken for granted. */
        ASSUMED,
        /** Nothing is known between two readings further apart than the place bridges; taken for granted like the rest. */
        UNACCOUNTED
    }

    ColdPart plus(ColdPart more) {
        return new ColdPart(basis, days + more.days, least + more.least, likely + more.likely, most + more.most);
    }
}
