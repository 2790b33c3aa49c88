// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Winter.Look;

/** A batch of six tulips of which some go, and how its parts stand. */
class TurnsTest {
    private final Winter winter = Winter.winter()
            .place("cellar", Sort.CELLAR)
            .place("stair", Sort.COOL_ROOM)
            .place("sill", Sort.WARM_SILL)
            .pots("T1-T6", "Tuesday Coat", "tulip")
            .potted("1 oct", "cellar");

    private List<Id<Pot>> into(String place, Stage stage) {
        return winter.on("20 jan").turnsInto(stage, winter.placeId(place), winter.ids("T1-T6"));
    }

    @Test
    void theMostReadyGoFirstThenByLabel() {
        winter.then("T4 T6").saw("19 jan", Look.roots()).then("T1").saw("19 jan", Look.noRoots());
        assertThat(into("stair", Stage.COOL_ROOM)).isEqualTo(winter.ids("T4 T6 T2 T3 T5 T1"));
    }

    @Test
    void theNearestGoBeforeThoseFurtherBehindAndThoseFurtherOnLast() {
        winter.then("T2")
                .moved("10 jan", "stair")
                .then("T5")
                .moved("10 jan", "sill")
                .flowered("19 jan");
        assertThat(into("sill", Stage.WARM_ROOM)).isEqualTo(winter.ids("T2 T1 T3 T4 T6"));
        assertThat(into("stair", Stage.COOL_ROOM)).isEqualTo(winter.ids("T1 T3 T4 T6 T5"));
    }

    @Test
    void whatIsDoneGoesNowhere() {
        winter.then("T1").closed("19 jan", End.BROKEN);
        assertThat(into("sill", Stage.WARM_ROOM)).isEqualTo(winter.ids("T2-T6"));
    }

    @Test
    void theFurthestOnLeaveTheBookFirst() {
        winter.then("T2")
                .moved("10 jan", "stair")
                .then("T5")
                .moved("10 jan", "sill")
                .flowered("19 jan");
        winter.then("T1").closed("19 jan", End.BROKEN);
        assertThat(winter.on("20 jan").turnsAway(winter.ids("T1-T6"))).isEqualTo(winter.ids("T5 T2 T3 T4 T6"));
    }

    @Test
    void aBatchIsToldByItsParts() {
        winter.then("T2 T4").moved("10 jan", "stair").then("T5").closed("19 jan", End.SOLD);
        winter.then("T6").closed("19 jan", End.BROKEN);
        assertThat(winter.on("20 jan").batchOf(winter.id("T1")))
                .containsExactly(
                        part(Stage.COLD, "cellar", "T1 T3"),
                        part(Stage.COOL_ROOM, "stair", "T2 T4"),
                        gone(End.SOLD, "T5"),
                        gone(End.BROKEN, "T6"));
        assertThat(winter.on("20 jan").rowOf(winter.id("T1"))).isEqualTo(winter.ids("T1-T4"));
        assertThat(winter.on("20 jan").rowOf(winter.id("T5"))).isEqualTo(winter.ids("T5"));
    }

    @Test
    void aPotOfItsOwnHasNoBatch() {
        winter.pot("D1", "Lantern Row", "daffodil").potted("1 oct", "cellar");
        assertThat(winter.on("20 jan").batchOf(winter.id("D1"))).isEmpty();
        assertThat(winter.on("20 jan").rowOf(winter.id("D1"))).isEqualTo(winter.ids("D1"));
    }

    private BatchPart part(Stage stage, String place, String labels) {
        return new BatchPart(stage, Optional.of(winter.placeId(place)), Optional.empty(), winter.ids(labels));
    }

    private BatchPart gone(End end, String labels) {
        return new BatchPart(Stage.DONE, Optional.empty(), Optional.of(end), winter.ids(labels));
    }
}
