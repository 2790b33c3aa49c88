// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Today.Attention;

/**
 * Frost that was read at a place in the last weeks. It is noted below 0 C and acted on from -2 C (28 F) down, when pots should be moved (an
 * extension column of Louisiana); that softness shows after two weeks is assumed.
 *
 * @param coldestOn the day of its lowest; the last of them where there are more
 * @param on the last day of it
 * @param lowest of all its days
 */
record Frost(Id<Place> place, LocalDate coldestOn, LocalDate on, Temperature lowest) {
    private static final Comparator<Frost> COLDEST = Comparator.<Frost>comparingInt(frost -> frost.lowest.milli())
            .thenComparing(Frost::coldestOn, Comparator.reverseOrder());

    private static final int ACTED_ON_AT = -2000;

    /** Softness shows after so many days (assumed). */
    private static final int LOOK_AFTER_DAYS = 14;

    /** A little frost is past and forgotten after so many days; a hard one when it was looked after for so long again. */
    private static final int NOTED_DAYS = 7;

    private static final int ACTED_ON_DAYS = 2 * LOOK_AFTER_DAYS;

    /** The frost at a place within some days: a hard one, else the last slight one. */
    private static Optional<Frost> at(Journal journal, Id<Place> place, DaySpan within, LocalDate today) {
        return gravest(daysAt(journal, place, within, today));
    }

    private static List<Frost> daysAt(Journal journal, Id<Place> place, DaySpan within, LocalDate today) {
        return days(journal, place, within, today)
                .filter(day -> day.isHard() || day.on.isAfter(today.minusDays(NOTED_DAYS)))
                .toList();
    }

    /** All that was hard taken together, else all that was slight. */
    static Optional<Frost> gravest(Collection<Frost> some) {
        return joined(some.stream().filter(Frost::isHard)).or(() -> joined(some.stream()));
    }

    private static Stream<Frost> days(Journal journal, Id<Place> place, DaySpan within, LocalDate today) {
        DaySpan lately = DaySpan.of(today.minusDays(ACTED_ON_DAYS), today.plusDays(1));
        return lately.intersection(within).stream().flatMap(days -> {
            ReadDays read = ReadDays.of(journal, place, today);
            Stream<Frost> logged = read.sums(days).values().stream()
                    .filter(day -> day.lowest() < 0)
                    .map(day -> oneDay(place, day.day(), day.between().low()));
            Stream<Frost> spanned = read.spansReadIn(days)
                    .filter(span -> span.between().low().milli() < 0)
                    .map(span -> oneDay(
                            place, span.days().endExclusive(), span.between().low()));
            return Stream.concat(logged, spanned);
        });
    }

    static Frost oneDay(Id<Place> place, LocalDate day, Temperature lowest) {
        return new Frost(place, day, day, lowest);
    }

    private static Optional<Frost> joined(Stream<Frost> days) {
        return days.reduce((one, other) -> {
            Frost coldest = COLDEST.compare(one, other) <= 0 ? one : other;
            return new Frost(one.place, coldest.coldestOn, Dates.later(one.on, other.on), coldest.lowest);
        });
    }

    boolean isHard() {
        return lowest.milli() <= ACTED_ON_AT;
    }

    /** The day to look for softness; empty where the frost was slight. */
    Optional<LocalDate> lookOn() {
        return Optional.of(on.plusDays(LOOK_AFTER_DAYS)).filter(day -> isHard());
    }

    /** What a pot stood through and nobody has looked after since: before it flowers. */
    static Optional<Frost> of(Journal journal, PotLife life, LocalDate today) {
        return each(journal, life, today)
                .max(Comparator.comparing(Frost::isHard).thenComparing(Frost::on));
    }

    /** The days of it at one place only. */
    static Stream<Frost> days(Journal journal, PotLife life, Id<Place> place, LocalDate today) {
        return life.phases().stream()
                .filter(phase -> phase.place().filter(place::equals).isPresent())
                .map(phase -> daysAt(journal, place, phase.days(), today))
                .filter(days -> gravest(days)
                        .filter(frost -> !isLookedAfter(frost, life))
                        .isPresent())
                .flatMap(List::stream);
    }

    /**
     * What is said of the place.
     *
     * @param pots those that stood through it
     */
    Attention.FrostThere there(int pots) {
        return new Attention.FrostThere(place, pots, lowest, coldestOn, on, lookOn());
    }

    private static Stream<Frost> each(Journal journal, PotLife life, LocalDate today) {
        return life.phases().stream()
                .flatMap(phase ->
                        phase.place().stream().flatMap(place -> at(journal, place, phase.days(), today).stream()))
                .filter(frost -> !isLookedAfter(frost, life));
    }

    private static boolean isLookedAfter(Frost frost, PotLife life) {
        return frost.lookOn()
                .filter(day -> life.seen()
                        .lastLook()
                        .filter(look -> !look.likely().isBefore(day))
                        .isPresent())
                .isPresent();
    }
}
