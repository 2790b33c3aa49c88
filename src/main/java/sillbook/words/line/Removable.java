// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.OwnKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.ReadingSource;
import sillbook.model.SeasonPlan;
import sillbook.model.UsualWay;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.words.Vocabulary;

/** What can be removed beside pots and single entries, and how a line points at it. */
enum Removable {
    VARIETY,
    PLACE,
    GROUND,
    MIX,
    CONTAINER,
    USUAL_WAY,
    KIND,
    PURCHASE,
    READING,
    THERMOMETER,
    FILE,
    FILE_FORMAT,
    WISH,
    PLAN,
    OUTCOME;

    static final Vocabulary<Removable> WORDS = Vocabulary.<Removable>of("sort of thing")
            .with(VARIETY, "variety")
            .with(PLACE, "place")
            .with(GROUND, "ground")
            .with(MIX, "potting mix", "mix")
            .with(CONTAINER, "container")
            .with(USUAL_WAY, "usual way")
            .with(KIND, "kind")
            .with(PURCHASE, "purchase")
            .with(READING, "reading")
            .with(THERMOMETER, "thermometer")
            .with(FILE, "file", "readings")
            .with(FILE_FORMAT, "file format", "format")
            .with(WISH, "wish")
            .with(PLAN, "plan")
            .with(OUTCOME, "outcome");

    static final Slot<UsualWay> NAMED_WAY = Slot.one("usual way", MakingWay.KNOWN);
    static final Slot<OwnKind> OWN_KIND = Slot.one(
            "kind", new NameSense<>(bench -> bench.journal().ownKinds().all(), OwnKind::name, (kind, bench) -> ""));

    /** Those of this sort that the line names. */
    Stream<? extends Entity<?>> named(Filled filled, Journal journal) {
        return switch (this) {
            case VARIETY -> filled.get(Slots.VARIETY).stream();
            case PLACE -> filled.get(Slots.PLACE).stream();
            case GROUND -> filled.get(Slots.PLACE).flatMap(place -> journal.trench(place.id())).stream();
            case MIX -> filled.get(Slots.MIX).stream();
            case CONTAINER -> filled.get(Slots.CONTAINER).stream();
            case USUAL_WAY -> filled.get(NAMED_WAY).stream();
            case KIND -> filled.get(OWN_KIND).stream();
            case PURCHASE -> filled.get(Slots.VARIETY).flatMap(variety -> lastPurchase(variety, journal)).stream();
            case READING -> filled.get(Slots.PLACE).flatMap(place -> LastTyped.of(place, journal)).stream();
            case THERMOMETER -> filled.get(Slots.PLACE).flatMap(place -> journal.thermometerAt(place.id())).stream();
            case FILE -> filled.get(Slots.PLACE).flatMap(place -> lastFile(place, journal)).stream();
            case FILE_FORMAT ->
                filled.get(Slots.PLACE).stream().flatMap(place -> journal.loggerProfilesAt(place.id()).stream());
            case WISH -> wishes(filled, journal);
            case PLAN -> plans(filled, journal);
            case OUTCOME -> outcomes(filled, journal);
        };
    }

    /** Of those that were taken in there the one that goes on longest. */
    private static Optional<ReadingSource> lastFile(Place place, Journal journal) {
        return journal.readingSources().all().stream()
                .filter(source -> source.place().equals(place.id()))
                .max(Comparator.comparing(ReadingSource::last));
    }

    private static Optional<Purchase> lastPurchase(Variety variety, Journal journal) {
        return journal.purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .max(Comparator.comparing(Purchase::day));
    }

    /** Those that fit all that is said of them: the days or the feast, the kind, the pots. */
    private static Stream<? extends Entity<?>> wishes(Filled filled, Journal journal) {
        Set<Pot> pots = Set.copyOf(Slots.pots(filled));
        boolean said =
                filled.has(WishForm.DAYS) || filled.has(EntryNamed.DAYS) || filled.has(Slots.KIND) || !pots.isEmpty();
        return journal.wishes().all().stream()
                .filter(wish -> said)
                .filter(wish -> filled.get(WishForm.DAYS)
                        .map(days -> days.span().contains(wish.from()))
                        .orElse(true))
                .filter(wish -> filled.all(EntryNamed.DAYS).stream().allMatch(day -> isOn(wish, day)))
                .filter(wish -> filled.get(Slots.KIND).isEmpty()
                        || filled.get(Slots.KIND).equals(wish.kind()))
                .filter(wish -> wish.pots().containsAll(Lines.ids(List.copyOf(pots))));
    }

    /** A wish's day without a year was not written looking back, so the year is left aside. */
    private static boolean isOn(Wish wish, Day day) {
        return MonthDay.from(wish.from()).equals(MonthDay.from(day.likely()));
    }

    /** Of several with that letter that of the season that is named, else the last. */
    private static Stream<SeasonPlan> plans(Filled filled, Journal journal) {
        return journal.seasonPlans().all().stream()
                .filter(plan ->
                        filled.get(PlanNamed.LETTER).filter(plan.name()::equals).isPresent())
                .filter(plan -> filled.get(Marking.SEASON)
                        .filter(season -> !season.equals(plan.season()))
                        .isEmpty())
                .max(Comparator.comparing(SeasonPlan::season))
                .stream();
    }

    private static Stream<? extends Entity<?>> outcomes(Filled filled, Journal journal) {
        return journal.outcomes().all().stream()
                .filter(outcome -> Lines.ids(Slots.pots(filled)).contains(outcome.pot()));
    }
}
