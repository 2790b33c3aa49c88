// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.reckon.dates.DaySpan;

/** The days between the first and the last flower of the last finished winter on which nothing was in flower. */
final class BloomGaps {
    /** A gap of fewer days is hardly seen (common practice). */
    private static final int FEWEST_DAYS = 3;

    private final Season last;
    private final Winters winters;
    private final List<DaySpan> gaps;

    BloomGaps(Season last, Winters winters) {
        this.last = last;
        this.winters = winters;
        this.gaps = between(DaySpan.joined(winters.in(last).stream()
                .flatMap(grown -> grown.inBloom().stream())
                .toList()));
    }

    private static List<DaySpan> between(List<DaySpan> blooms) {
        return IntStream.range(1, blooms.size())
                .mapToObj(next -> after(blooms.get(next - 1), blooms.get(next)))
                .filter(gap -> gap.days() >= FEWEST_DAYS)
                .toList();
    }

    private static DaySpan after(DaySpan bloom, DaySpan next) {
        LocalDate faded = bloom.endExclusive();
        return DaySpan.of(faded, next.start());
    }

    /** Most of a gap that the variety was in flower on in an earlier winter. */
    Optional<Reason.FillsGap> filledBy(Id<Variety> variety) {
        return winters.of(variety).stream()
                .filter(grown -> grown.winter().isBefore(last))
                .flatMap(this::inLastWinter)
                .flatMap(bloom -> gaps.stream().flatMap(gap -> gap.intersection(bloom).stream()))
                .filter(filled -> filled.days() >= FEWEST_DAYS)
                .max(Comparator.comparing(DaySpan::days))
                .map(Reason.FillsGap::new);
    }

    /** Its days in flower as they would have been in the last winter. */
    private Stream<DaySpan> inLastWinter(Grown grown) {
        return grown
                .bloom()
                .firstFlower()
                .flatMap(first -> grown.bloom()
                        .pastBloom()
                        .filter(past -> past.likely().isAfter(first.likely()))
                        .map(past -> moved(grown.winter(), first.likely(), past.likely())))
                .stream();
    }

    private DaySpan moved(Season winter, LocalDate from, LocalDate toExclusive) {
        int years = last.year() - winter.year();
        return DaySpan.of(from.plusYears(years), toExclusive.plusYears(years));
    }
}
