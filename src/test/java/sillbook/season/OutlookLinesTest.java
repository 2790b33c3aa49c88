// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;

class OutlookLinesTest {
    private final Winter told = winter().place("cellar", Sort.CELLAR)
            .place("porch", Sort.PORCH)
            .pots("H1-H5", "Inkwell", "hyacinth")
            .potted("12 oct", "cellar")
            .then("H1-H2")
            .moved("8 jan", "porch")
            .pot("T1", "Tuesday Coat", "tulip")
            .potted("5 oct", "cellar");

    private List<PotLine> at(String place) {
        return told.on("12 jan").linesAt(told.placeId(place));
    }

    private static Stage now(PotLine line) {
        return line.phases().stream()
                .filter(Phase::happened)
                .reduce((one, last) -> last)
                .orElseThrow()
                .stage();
    }

    @Test
    void potsOfABatchThatStandTogetherShareALine() {
        assertThat(at("cellar")).extracting(PotLine::pots).containsExactly(told.ids("H3-H5"), told.ids("T1"));
        assertThat(at("porch")).extracting(PotLine::pots).containsExactly(told.ids("H1-H2"));
    }

    @Test
    void eachPartOfABatchIsDrawnAsItStands() {
        assertThat(now(at("cellar").get(0))).isEqualTo(Stage.COLD);
        assertThat(now(at("porch").get(0))).isEqualTo(Stage.COOL_ROOM);
    }

    @Test
    void aPotOfABatchAloneIsDrawnAsItStands() {
        Outlook outlook = told.on("12 jan");

        PotLine inside = outlook.line(told.id("H1"));
        assertThat(inside.pots()).containsExactly(told.id("H1"));
        assertThat(now(inside)).isEqualTo(Stage.COOL_ROOM);
        assertThat(now(outlook.line(told.id("H3")))).isEqualTo(Stage.COLD);
    }

    @Test
    void whereNothingStandsThereIsNoLine() {
        told.place("trench", Sort.TRENCH);

        assertThat(at("trench")).isEmpty();
    }
}
