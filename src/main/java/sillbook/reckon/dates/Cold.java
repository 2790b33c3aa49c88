// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cold of one pot: what dry cold before potting takes off the need, and whether what it had was enough.
 *
 * <p>Of 15 weeks, 10 dry and 5 potted did as well as 15 potted ones; 12 and 3 did not (Oklahoma State University,
 * HortScience 29(5):487d, 1994). So at most 10 weeks are taken off, one for one, and at least 5 stay.
 *
 * @param need the whole need, in days
 * @param dryDays days of cold before potting
 */
record Cold(DayCount need, Optional<Integer> limit, int dryDays) {
    static final int MOST_DRY = 70;
    static final int LEAST_POTTED = 35;

    int credited() {
        return Math.min(dryDays, MOST_DRY);
    }

    /** What has to follow potting. A need shorter than the least is not made longer. */
    DayCount potted() {
        return need.less(credited()).atLeast(need.atMost(DayCount.of(LEAST_POTTED)));
    }

    /** Days it may wait past the longest published cold; 0 where no limit is known. */
    int longestWait() {
        return limit.map(most -> Math.max(0, most - need.high())).orElse(0);
    }

    /** What to say when it would have to wait so many days past the longest published cold. */
    Warning heldBack(int days) {
        return new Warning.TooMuchCold(need.high() + days, need, limit, true);
    }

    /** What to say of a cold of which the beginning, and perhaps the end, are known. */
    List<Warning> warnings(Map<Milestone, LocalDate> pins) {
        List<Warning> found = new ArrayList<>();
        if (dryDays > MOST_DRY) {
            found.add(new Warning.DryCredit(dryDays, credited()));
        }
        Optional<Integer> stayed = stayed(pins);
        if (need.high() == 0 || stayed.filter(days -> days == 0).isPresent()) {
            found.add(new Warning.NoPottedCold());
        }
        stayed.ifPresent(days -> judge(days, found));
        return found;
    }

    private static Optional<Integer> stayed(Map<Milestone, LocalDate> pins) {
        Optional<LocalDate> began = Optional.ofNullable(pins.get(Milestone.COLD));
        Optional<LocalDate> ended = Optional.ofNullable(pins.get(Milestone.COOL_ROOM))
                .or(() -> Optional.ofNullable(pins.get(Milestone.WARM_ROOM)));
        return began.flatMap(from -> ended.map(to -> (int) ChronoUnit.DAYS.between(from, to)));
    }

    /** Too little counts the dry cold that is credited; too much counts all of it. */
    private void judge(int pottedDays, List<Warning> found) {
        int least = potted().low();
        if (pottedDays < least) {
            found.add(new Warning.TooLittleCold(pottedDays, credited(), need, least));
        }
        if (pottedDays + dryDays > need.high()) {
            found.add(new Warning.TooMuchCold(pottedDays + dryDays, need, limit, false));
        }
    }
}
