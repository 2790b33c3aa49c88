// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * How far one level is above another of its factor.
 *
 * @param value of {@code a} less that of {@code b}
 * @param better the chance that {@code a} is above {@code b}, 0 to 1
 */
public record Difference(String a, String b, double value, double sd, double better) {
    /** The same, the other way round. */
    public Difference turned() {
        return new Difference(b, a, -value, sd, 1 - better);
    }
}
