// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.season.past.By;
import sillbook.season.past.Grown.Rating;
import sillbook.season.past.Shared;
import sillbook.season.past.Tallied;
import sillbook.season.past.Tally;

/** Counts of how pots did, as they are said. */
public record TallyWords(Journal journal) {
    /** What counts as what. */
    public static final String KEY = "well: 4 or 5 at full bloom; fair: 3; failed: 1 or 2, or no flower.";

    private static final String NO_DATA = "no data";

    public static final Vocabulary<Rating> RATINGS = Vocabulary.<Rating>of("rating")
            .with(Rating.WELL, "well")
            .with(Rating.FAIR, "fair")
            .with(Rating.FAILED, "failed");

    public static final Vocabulary<By> BYS = Vocabulary.<By>of("thing to count by")
            .with(By.VARIETY, "variety")
            .with(By.PURCHASE, "purchase")
            .with(By.POTTING_MIX, "potting mix", "mix")
            .with(By.PLACE, "place");

    /** {@code 3 winters, 78 pots: 62 well, 11 fair, 5 failed}. */
    public static String sum(int winters, Tally tally) {
        return Counts.of(winters, "winter") + ", " + Counts.of(tally.pots(), "pot") + ": " + counts(tally);
    }

    /** {@code 62 well, 11 fair, 5 failed}; {@code all well} where they agree. */
    static String counts(Tally tally) {
        List<String> counts = new ArrayList<>();
        for (Rating rating : Rating.values()) {
            int count = tally.count(rating);
            if (count > 1 && count == tally.pots()) {
                return "all " + RATINGS.say(rating);
            }
            if (count > 0) {
                counts.add(count + " " + RATINGS.say(rating));
            }
        }
        return counts.isEmpty() ? NO_DATA : String.join(", ", counts);
    }

    /** {@code yes}; {@code ?} where nobody said. */
    public static String again(Tally tally) {
        return tally.again().map(Terms.AGAINS::say).orElse("?");
    }

    /** By its name: {@code 'Inkwell'}, {@code house mix}, {@code cellar}, {@code 'Inkwell' 2025-26}. */
    public String name(Shared shared) {
        return shared.fold(new Names());
    }

    private final class Names implements Shared.Cases<String> {
        @Override
        public String variety(Id<Variety> variety) {
            return new PotNames(journal).variety(variety);
        }

        @Override
        public String purchase(Id<Purchase> purchase) {
            Purchase bought = journal.purchases().get(purchase);
            return variety(bought.variety()) + " " + journal.nameOf(bought.season());
        }

        @Override
        public String pottingMix(Id<PottingMix> mix) {
            return journal.pottingMixes().get(mix).name();
        }

        @Override
        public String place(Id<Place> place) {
            return new PotNames(journal).place(place);
        }
    }

    /** {@code 8 pots in 3 winters, all well; but all 8 stood in the garage fridge, so the place may have done it.} */
    public String aside(Tallied tallied) {
        Tally tally = tallied.tally();
        if (tally.pots() == 0) {
            return Counts.of(tallied.grown().size(), "pot") + ", none of them judged yet.";
        }
        String record =
                Counts.of(tally.pots(), "pot") + " in " + Counts.of(tally.winters(), "winter") + ", " + counts(tally);
        return record + onlyAt(tallied).map(but -> "; " + but).orElse("") + ".";
    }

    /** {@code 'Inkwell': 9 pots in 3 winters, all well. Again: yes. Last noted: scent fills the room}. */
    public String line(Tallied tallied) {
        Tally tally = tallied.tally();
        String again = tally.again().isPresent() ? " Again: " + again(tally) + "." : "";
        String noted = tally.noted().map(note -> " Last noted: " + note).orElse("");
        return name(tallied.what()) + ": " + aside(tallied) + again + noted;
    }

    /** Of a place nothing is to be said: its pots stood there. */
    private Optional<String> onlyAt(Tallied tallied) {
        if (tallied.what() instanceof Shared.OfPlace) {
            return Optional.empty();
        }
        return tallied.tally()
                .onlyAt()
                .map(place -> "but all " + tallied.tally().pots() + " had their cold in the "
                        + new PotNames(journal).place(place) + ", so that may have done it. Try one elsewhere");
    }
}
