// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Place.Sort;
import sillbook.model.Variety;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Winter;
import sillbook.season.past.Influence.OfPlace;
import sillbook.season.past.Influence.OfVariety;
import sillbook.season.past.Trials.Silence;

class TrialsTest {
    private int pots;

    private static Winter house() {
        return winter().place("fridge", Sort.FRIDGE).place("cellar", Sort.CELLAR);
    }

    private Winter grown(Winter house, String variety, String place, int... scores) {
        for (int score : scores) {
            house.pot("T" + ++pots, variety, "tulip").potted("1 oct", place).outcome("1 mar", score);
        }
        return house;
    }

    private static Trials trials(Winter house) {
        return Trials.of(Winters.of(house.journal(), house.day("1 apr")), house.journal());
    }

    private static OfVariety variety(Winter house, String name) {
        return house.journal().varieties().all().stream()
                .filter(variety -> variety.name().equals(name))
                .map(Variety::id)
                .map(OfVariety::new)
                .findFirst()
                .orElseThrow();
    }

    private static OfPlace place(Winter house, String name) {
        return new OfPlace(Optional.of(house.placeId(name)));
    }

    private static Merit merit(Merits merits, Influence influence) {
        return merits.all().stream()
                .filter(merit -> merit.influence().equals(influence))
                .findFirst()
                .orElseThrow();
    }

    /** Two varieties alike; the one that had the better place more often has the better plain mean, and no better level. */
    private Winter unequalLuck() {
        Winter house = house();
        grown(house, "Tuesday Coat", "fridge", 5, 5, 4, 5, 5, 4);
        grown(house, "Marrow Lane", "fridge", 5, 4, 5);
        grown(house, "Marrow Lane", "cellar", 3, 2, 3, 2, 3);
        grown(house, "Lantern Row", "cellar", 2, 3, 3);
        return grown(house, "Lantern Row", "fridge", 5, 4);
    }

    @Test
    void whatThePlaceDidIsTakenOut() {
        Winter house = unequalLuck();
        Trials trials = trials(house);
        Merits merits = trials.merits(Trait.VARIETY, trials.averaged());
        Merit coat = merit(merits, variety(house, "Tuesday Coat"));
        Merit lane = merit(merits, variety(house, "Marrow Lane"));
        assertThat(merits.ties()).isEmpty();
        assertThat(merits.isBestByPlainMean(coat)).isTrue();
        assertThat(merits.isBestByPlainMean(lane)).isFalse();
        assertThat(coat.plainMean().orElseThrow() - lane.plainMean().orElseThrow())
                .isGreaterThan(1);
        assertThat(coat.level().orElseThrow().score().value()
                        - lane.level().orElseThrow().score().value())
                .isLessThan(.4);
        assertThat(coat.notToldFrom()).contains(variety(house, "Marrow Lane"));
        assertThat(coat.onlyAt()).contains(place(house, "fridge"));
        assertThat(lane.onlyAt()).isEmpty();
        assertThat(merits.bestPlace()).contains(place(house, "fridge"));
        assertThat(merits.effectiveSize().orElseThrow()).isGreaterThan(1000);
    }

    @Test
    void placesAreToldApart() {
        Winter house = unequalLuck();
        Trials trials = trials(house);
        Merits merits = trials.merits(Trait.PLACE, trials.quick());
        assertThat(merits.leader().orElseThrow().influence()).isEqualTo(place(house, "fridge"));
        assertThat(merits.all())
                .allSatisfy(merit -> assertThat(merit.notToldFrom()).isEmpty());
        assertThat(merits.effectiveSize()).isEmpty();
    }

    /** All of one variety in the fridge, and nothing else there: said with its pots, and no figure for it. */
    @Test
    void aTieIsSaidAndItsFigureWithheld() {
        Winter house = house();
        grown(house, "Tuesday Coat", "fridge", 5, 4, 5, 4);
        grown(house, "Marrow Lane", "cellar", 3, 3, 4);
        grown(house, "Lantern Row", "cellar", 2, 3, 3);
        Trials trials = trials(house);
        Merits merits = trials.merits(Trait.VARIETY, trials.averaged());
        OfVariety coat = variety(house, "Tuesday Coat");
        assertThat(merits.ties())
                .containsExactly(new Tie(Trait.VARIETY, List.of(coat), 4, List.of(place(house, "fridge"))));
        assertThat(merit(merits, coat).level()).isEmpty();
        assertThat(merit(merits, coat).notToldFrom()).isEmpty();
        assertThat(merit(merits, variety(house, "Marrow Lane")).level()).isPresent();
        assertThat(merit(merits, variety(house, "Marrow Lane")).notToldFrom())
                .containsExactly(variety(house, "Lantern Row"));
        assertThat(merits.all().get(2).influence())
                .as("after those that can be told")
                .isEqualTo(coat);
        Merits places = trials.merits(Trait.PLACE, trials.averaged());
        assertThat(places.all())
                .as("two places, nothing between them")
                .allSatisfy(merit -> assertThat(merit.level()).isEmpty());
        assertThat(places.ties())
                .containsExactly(new Tie(Trait.PLACE, List.of(place(house, "fridge")), 4, List.of(coat)));
        assertThat(places.leader()).isEmpty();
    }

    @Test
    void whyNothingIsWorkedOut() {
        assertThat(trials(house()).silence()).contains(Silence.NO_SCORE);
        assertThat(trials(grown(house(), "Marrow Lane", "cellar", 4, 2)).silence())
                .contains(Silence.TOO_FEW);
        assertThat(trials(grown(house(), "Marrow Lane", "cellar", 4, 3, 4)).silence())
                .contains(Silence.ALL_ALIKE);
        Winter equal = grown(grown(house(), "Marrow Lane", "cellar", 4, 4), "Lantern Row", "fridge", 4, 4);
        assertThat(trials(equal).silence()).contains(Silence.ALL_EQUAL);
        assertThat(trials(unequalLuck()).silence()).isEmpty();
    }

    @Test
    void whereNothingIsWorkedOutThereAreStillCounts() {
        Winter house = grown(house(), "Marrow Lane", "cellar", 4, 2);
        house.pot("X1", "Lantern Row", "tulip").potted("1 oct", "fridge");
        Trials trials = trials(house);
        assertThat(trials.averaged()).isEmpty();
        assertThat(trials.quick()).isEmpty();
        assertThat(trials.confounding()).isEmpty();
        Merits merits = trials.merits(Trait.VARIETY, trials.averaged());
        assertThat(merits.scored()).singleElement().satisfies(merit -> {
            assertThat(merit.plainMean()).hasValue(3);
            assertThat(merit.isFew()).isTrue();
            assertThat(merit.level()).isEmpty();
        });
        assertThat(merits.withoutScore()).singleElement().satisfies(merit -> {
            assertThat(merit.influence()).isEqualTo(variety(house, "Lantern Row"));
            assertThat(merit.plainMean()).isEmpty();
            assertThat(merit.flowered()).isEqualTo(new Proportion(0, 0));
        });
        assertThat(merits.leader()).isEmpty();
        assertThat(merits.bestPlace()).isEmpty();
    }

    /** A trait in which the scored pots do not differ has counts, and no level. */
    @Test
    void oneOfItsSortHasNoLevel() {
        Trials trials = trials(grown(grown(house(), "Marrow Lane", "cellar", 4, 3), "Lantern Row", "cellar", 2, 3));
        assertThat(trials.traits()).containsExactly(Trait.VARIETY);
        Merits places = trials.merits(Trait.PLACE, trials.averaged());
        assertThat(places.all())
                .singleElement()
                .satisfies(merit -> assertThat(merit.level()).isEmpty());
        assertThat(places.bestPlace()).isEmpty();
        assertThat(trials.merits(Trait.MIX, trials.averaged()).all())
                .as("no mix is written")
                .isEmpty();
    }

    @Test
    void wintersAreTakenOut() {
        Winter house = grown(house(), "Marrow Lane", "cellar", 4, 5, 4);
        grown(house, "Lantern Row", "cellar", 4);
        house.of(2027);
        grown(house, "Marrow Lane", "cellar", 2);
        grown(house, "Lantern Row", "cellar", 2, 3, 2);
        Trials trials = trials(house);
        assertThat(trials.winters()).isEqualTo(2);
        assertThat(trials.traits()).containsExactly(Trait.VARIETY, Trait.WINTER);
        Effects effects = trials.averaged().orElseThrow();
        assertThat(effects.factor("VARIETY").differences().get(0).value()).isCloseTo(0, within(.4));
        assertThat(trials.merits(Trait.WINTER, Optional.of(effects)).leader())
                .get()
                .extracting(Merit::influence)
                .isEqualTo(new Influence.OfWinter(new sillbook.model.Season(2026)));
    }

    @Test
    void kindsStandAboveVarieties() {
        Winter house = grown(house(), "Marrow Lane", "cellar", 2, 3, 2, 2);
        grown(house, "Lantern Row", "cellar", 3, 2, 3);
        for (int i = 0; i < 4; i++) {
            house.pot("H" + i, "Inkwell", "hyacinth").potted("1 oct", "cellar").outcome("1 mar", 5);
        }
        Trials trials = trials(house);
        assertThat(trials.traits()).containsExactly(Trait.KIND, Trait.VARIETY);
        assertThat(trials.confounding().orElseThrow().factors()).isEmpty();
        Merits kinds = trials.merits(Trait.KIND, trials.averaged());
        assertThat(kinds.leader().orElseThrow().influence())
                .isEqualTo(new Influence.OfKind(sillbook.model.Kind.of("hyacinth")));
    }

    /** Where its place was not written for some, that is taken out like a place, and is none. */
    @Test
    void whatWasNotWrittenIsNotListed() {
        Winter house = grown(house(), "Marrow Lane", "cellar", 4, 3, 4);
        house.pot("X1", "Marrow Lane", "tulip").potted("1 oct").outcome("1 mar", 2);
        Merits places = trials(house).merits(Trait.PLACE, trials(house).averaged());
        assertThat(places.all()).extracting(Merit::influence).containsExactly(place(house, "cellar"));
        assertThat(places.bestPlace()).contains(place(house, "cellar"));
    }

    /** That a kind needs no cold is no rival to its varieties: their figures are given. */
    @Test
    void whatHadNoColdIsNotTiedToIt() {
        Winter house = grown(house(), "Marrow Lane", "cellar", 4, 3, 4);
        grown(house, "Marrow Lane", "fridge", 4);
        house.place("sill", Sort.WARM_SILL);
        for (int i = 0; i < 3; i++) {
            house.pot("P" + i, "Linen Parade", "paperwhite")
                    .potted("1 nov", "sill")
                    .outcome("20 dec", 5 - i % 2);
        }
        Trials trials = trials(house);
        Merits merits = trials.merits(Trait.VARIETY, trials.averaged());
        assertThat(merits.ties()).isEmpty();
        assertThat(merits.all()).allSatisfy(merit -> assertThat(merit.level()).isPresent());
    }
}
