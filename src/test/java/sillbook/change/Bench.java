// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Variety;

/** A journal to try changes on: one variety, a cellar, a sill, and whatever a test does to it. All of it is invented. */
final class Bench {
    /** What is said when an entry that is named is not there. */
    static final String GONE = "Something named here is no longer in the journal; another window may have removed it."
            + " Look again, and name it anew.";

    static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    static final Season WINTER = new Season(2026);
    static final Variety MARROW_LANE = Variety.of(new Id<>(1, 1), "Marrow Lane", new Kind("tulip", "Triumph"));
    static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);
    static final Place SILL = Place.of(new Id<>(2, 2), "kitchen sill", Place.Sort.WARM_SILL);

    final Hand hand = new Hand(Instant.parse("2027-01-12T09:00:00Z"), TODAY, counting());
    Journal journal = Journal.of(List.of(Settings.initial(ZoneOffset.UTC), MARROW_LANE, CELLAR, SILL));

    private static Ids counting() {
        long[] last = {100};
        return () -> last[0]++;
    }

    /** Carries a change out, and gives its step. */
    Step done(Change change) {
        return change.on(journal, hand)
                .fold(
                        step -> {
                            journal = journal.with(step.edits());
                            return step;
                        },
                        refusal -> fail("refused: " + refusal.sentence()));
    }

    /** The sentence a change is refused with. */
    String refused(Change change) {
        Decision decision = change.on(journal, hand);
        assertThat(decision).isInstanceOf(Refusal.class);
        return ((Refusal) decision).sentence();
    }

    /** Pots in the cellar since 14 October. */
    static PotUp tulips(int howMany, String labels) {
        return pots(howMany, labels, Optional.of(Day.on(LocalDate.of(2026, 10, 14))), Optional.of(CELLAR.id()));
    }

    static PotUp pots(int howMany, String labels, Optional<Day> potted, Optional<Id<Place>> place) {
        return new PotUp(
                WINTER,
                List.of(new Pot.Planting(MARROW_LANE.id(), 5, Optional.empty())),
                howMany,
                labels,
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                potted,
                place,
                Optional.empty(),
                "");
    }

    Id<Pot> pot(String label) {
        return journal.pot(WINTER, label).orElseThrow().id();
    }

    static Day day(int month, int day) {
        return Day.on(LocalDate.of(month > 6 ? 2026 : 2027, month, day));
    }
}
