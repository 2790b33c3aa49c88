// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Place.Sort;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Winter;

class ForetellingsTest {
    private static final Season FIRST = new Season(2026);

    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .place("stair window", Sort.COOL_ROOM)
            .place("sill", Sort.WARM_SILL);
    private final List<KeptWindow> kept = new ArrayList<>();

    private void keep(String pot, Stage stage, String madeOn, String earliest, String latest) {
        kept.add(new KeptWindow(
                house.id(pot),
                stage,
                house.day(madeOn),
                house.day(earliest),
                house.day(earliest),
                house.day(latest),
                "after-cold (handbook)"));
    }

    private Truth truth() {
        return Foretellings.of(house.journal(), kept, house.day("1 may")).of(FIRST);
    }

    private void tulip(String label, String flower) {
        house.pot(label, "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .moved("8 jan", "sill")
                .flowered(flower);
    }

    @Test
    void aWindowHoldsItsFirstAndItsLastDayAndIsMissedByTheDaysBeyond() {
        String[] flowers = {"1 feb", "5 feb", "10 feb", "11 feb", "30 jan"};
        for (int i = 0; i < flowers.length; i++) {
            tulip("T" + (i + 1), flowers[i]);
            keep("T" + (i + 1), Stage.IN_BLOOM, "8 jan", "1 feb", "10 feb");
        }
        Truth truth = truth();
        assertThat(truth.all()).extracting(Foretelling::daysOff).containsExactly(-2L, 0L, 0L, 0L, 1L);
        assertThat(truth.held()).isEqualTo(new Proportion(3, 5));
        assertThat(truth.early()).isEqualTo(1);
        assertThat(truth.late()).isEqualTo(1);
        assertThat(truth.missed()).hasSize(2);
        assertThat(truth.middleMiss()).as("of 1 and 2 days").contains(2L);
        assertThat(truth.byStage()).containsOnlyKeys(Stage.IN_BLOOM).containsValue(new Proportion(3, 5));
    }

    @Test
    void theWindowCountsThatWasKeptWhenTheStageBeforeBegan() {
        house.pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .moved("2 jan", "stair window")
                .moved("12 jan", "sill")
                .flowered("5 feb");
        keep("T1", Stage.IN_BLOOM, "1 oct", "1 jan", "30 jan");
        keep("T1", Stage.IN_BLOOM, "2 jan", "10 jan", "31 jan");
        keep("T1", Stage.IN_BLOOM, "13 jan", "1 feb", "10 feb");
        keep("T1", Stage.IN_BLOOM, "1 feb", "4 feb", "4 feb");
        assertThat(truth().all())
                .as("written a day late, and the pot turned to the light later on")
                .extracting(Foretelling::window)
                .containsExactly(kept.get(2));
    }

    @Test
    void whereNoneWasKeptThenTheLastOneBeforeCounts() {
        house.pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .moved("12 jan", "sill")
                .flowered("5 feb")
                .pastBloom("16 feb");
        keep("T1", Stage.AFTER_BLOOM, "1 oct", "1 jan", "30 jan");
        keep("T1", Stage.AFTER_BLOOM, "12 jan", "10 feb", "20 feb");
        assertThat(truth().all()).extracting(Foretelling::window).containsExactly(kept.get(1));
    }

    @Test
    void aWindowMadeOnItsDayOrLaterForetoldNothing() {
        tulip("T1", "5 feb");
        keep("T1", Stage.IN_BLOOM, "5 feb", "5 feb", "5 feb");
        keep("T1", Stage.IN_BLOOM, "1 mar", "5 feb", "5 feb");
        assertThat(truth().all()).isEmpty();
    }

    @Test
    void whatHasNotComeIsOnlyAboutKnownOrTheGrowersOwnDoingIsNoData() {
        house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "cellar").moved("8 jan", "sill");
        keep("T1", Stage.WARM_ROOM, "1 oct", "1 jan", "10 jan");
        keep("T1", Stage.IN_BLOOM, "8 jan", "1 feb", "10 feb");
        tulip("T2", "~5 feb");
        keep("T2", Stage.IN_BLOOM, "8 jan", "1 feb", "10 feb");
        kept.add(new KeptWindow(
                new Id<>(9, 9),
                Stage.IN_BLOOM,
                house.day("8 jan"),
                house.day("1 feb"),
                house.day("1 feb"),
                house.day("1 feb"),
                "of a pot that is gone"));
        Truth truth = truth();
        assertThat(truth.all()).isEmpty();
        assertThat(truth.held()).isEqualTo(new Proportion(0, 0));
        assertThat(truth.held().interval(0.95)).isEmpty();
        assertThat(truth.middleMiss()).isEmpty();
        assertThat(truth.byStage()).isEmpty();
    }

    @Test
    void potsMadeTogetherCountOnceWithTheMiddleOfTheirDays() {
        house.pots("T1-T4", "Marrow Lane", "tulip").potted("1 oct", "cellar").moved("8 jan", "sill");
        String[] flowers = {"12 feb", "3 feb", "13 feb", "9 feb"};
        for (int i = 0; i < flowers.length; i++) {
            house.then("T" + (i + 1)).flowered(flowers[i]);
            keep("T" + (i + 1), Stage.IN_BLOOM, "8 jan", "1 feb", "10 feb");
        }
        Truth truth = truth();
        assertThat(truth.all()).hasSize(1);
        Foretelling one = truth.all().get(0);
        assertThat(one.pots()).hasSize(4);
        assertThat(one.came()).isEqualTo(house.day("9 feb"));
        assertThat(truth.held()).isEqualTo(new Proportion(1, 1));

        kept.set(
                3,
                new KeptWindow(
                        house.id("T4"),
                        Stage.IN_BLOOM,
                        house.day("9 jan"),
                        house.day("1 feb"),
                        house.day("2 feb"),
                        house.day("10 feb"),
                        "carried a day later"));
        assertThat(truth().all()).as("foretold apart, two").hasSize(2);
    }

    @Test
    void aPlantThatLivesOnIsHeldToEachWinterByItself() {
        house.pot("A1", "Tin Starling", "amaryllis")
                .potted("1 nov", "sill")
                .flowered("20 dec")
                .pastBloom("8 jan");
        keep("A1", Stage.IN_BLOOM, "1 nov", "10 dec", "30 dec");
        house.of(2027).then("A1").cared("1 nov", Care.WOKEN).flowered("30 dec");
        keep("A1", Stage.IN_BLOOM, "2 nov", "10 dec", "20 dec");
        Foretellings all = Foretellings.of(house.journal(), kept, house.day("1 may"));
        assertThat(all.of(FIRST).held()).isEqualTo(new Proportion(1, 1));
        assertThat(all.of(FIRST.next()).held()).isEqualTo(new Proportion(0, 1));
        assertThat(all.before(FIRST, 2).all()).isEmpty();
        assertThat(all.before(FIRST.next(), 2).all()).hasSize(1);
        assertThat(all.before(FIRST.next().next(), 2).all()).hasSize(2);
        assertThat(all.before(FIRST.next().next(), 1).all()).hasSize(1);
    }

    @Test
    void aMixedPotIsInBloomFromTheFirstFlowerToTheLast() {
        house.mixed("M1", "Inkwell", "hyacinth", "Lantern Row", "daffodil")
                .potted("1 oct", "cellar")
                .moved("8 jan", "sill")
                .flowered("1 feb", BloomPoint.FIRST_FLOWER, "Inkwell")
                .flowered("9 feb", BloomPoint.FIRST_FLOWER, "Lantern Row");
        keep("M1", Stage.IN_BLOOM, "8 jan", "5 feb", "12 feb");
        assertThat(truth().all()).extracting(Foretelling::daysOff).containsExactly(-4L);
    }
}
