// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.model.Purchase;
import sillbook.reckon.dates.DayCount;

/**
 * Bulbs that wait dry at a place to be potted.
 *
 * @param bulbs those of the purchase that are not potted yet
 * @param dry the cold they had, before they came and since
 * @param limit the weeks of dry cold that count; empty for a kind that needs no cold
 * @param felt the day they were last looked at; empty when they were not since they came
 */
public record WaitingBulbs(
        Purchase purchase, int bulbs, DryCold dry, Optional<FigureInForce> limit, Optional<LocalDate> felt) {

    /** The last day they were looked at, as they came at the latest. */
    LocalDate lastLook() {
        LocalDate came = purchase.day().likely();
        return felt.filter(came::isBefore).orElse(came);
    }

    /** The day from which more dry cold does no good: the limit's usual weeks; empty where it does not get colder, or matter. */
    public Optional<LocalDate> potBy(LocalDate today) {
        return mostDays().filter(most -> isLong()).map(most -> today.plusDays(most - (long) dry.days()));
    }

    /** Whether their dry cold has come to the least that is published as its limit. */
    public boolean isLong() {
        return dry.atTheirPlace() > 0
                && limit.filter(weeks -> dry.days() >= days(weeks.range().low()))
                        .isPresent();
    }

    private Optional<Integer> mostDays() {
        return limit.map(weeks -> days(weeks.range().typical()));
    }

    private static int days(double weeks) {
        return DayCount.daysOfWeeks(Math.min(weeks, Figures.MOST_WEEKS));
    }
}
