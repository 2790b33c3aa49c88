// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import sillbook.model.DayRead;
import sillbook.season.PlaceClimate.Trial;
import sillbook.season.WhyTrial.Tried;

/**
 * How the trial of a place goes: by the days on end up to one of which anything is known. A day of which little is known does not count, unless
 * there was frost in it.
 *
 * @param last the last day anything is known of
 * @param isInBand whether a day stayed in the band, without frost
 */
record TrialReading(ReadDays days, LocalDate last, Predicate<LocalDate> isInBand) {

    Trial read() {
        LocalDate since = last;
        int count = 0;
        for (LocalDate day = last; days.isKnown(day); day = day.minusDays(1)) {
            since = day;
            count += counts(day) ? 1 : 0;
        }
        return new Trial(
                since, count, (int) tried().stream().filter(Tried::isInBand).count());
    }

    /** The last seven days that count, or as many as there are, and those between and after them that do not; the first first. */
    List<Tried> tried() {
        List<Tried> tried = new ArrayList<>();
        int left = Trial.DAYS;
        for (LocalDate day = last; left > 0 && days.isKnown(day); day = day.minusDays(1)) {
            Tried one = tried(day);
            tried.add(one);
            left -= one.counts() ? 1 : 0;
        }
        Collections.reverse(tried);
        return tried;
    }

    private Tried tried(LocalDate day) {
        boolean counts = counts(day);
        return new Tried(day, days.between(day).orElseThrow(), days.known(day), counts, counts && isInBand.test(day));
    }

    private boolean counts(LocalDate day) {
        return days.sum(day)
                .filter(sum -> !PlaceClimate.isMostlyKnown(sum) && !isFrosty(sum))
                .isEmpty();
    }

    private static boolean isFrosty(DayRead sum) {
        return sum.lowest() < 0;
    }
}
