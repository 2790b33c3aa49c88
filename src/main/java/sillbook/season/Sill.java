// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import sillbook.reckon.dates.DaySpan;

/**
 * The days of a season on which something is in flower.
 *
 * @param happened spans in order that do not touch, up to the end of today
 * @param foretold spans in order that do not touch, after today
 */
public record Sill(List<DaySpan> happened, List<DaySpan> foretold) {
    public Sill {
        happened = List.copyOf(happened);
        foretold = List.copyOf(foretold);
    }
}
