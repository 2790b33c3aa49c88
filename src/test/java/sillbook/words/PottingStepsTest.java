// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.handbook.KindEntry;
import sillbook.model.Kind;
import sillbook.model.Pot.Way;

/** The bench, held to what was read: University of Delaware 2017, Nebraska Extension 2020, Iowa State University, and others. */
class PottingStepsTest {
    private static List<String> says(Kind kind, Way way) {
        return new PottingSteps(Handbook.standard(), kind, way)
                .steps().stream().map(PottingSteps.Step::says).toList();
    }

    @Test
    void aTulipsFlatSideFacesTheRimAndItsPotGoesIntoTheCold() {
        assertThat(says(Kind.of("tulip"), Way.DRAINED))
                .startsWith("Holes clear, and covered with paper, mesh or a crock.")
                .contains("Set the bulbs down; do not press them in.", "The flat side of each bulb faces the rim.")
                .endsWith("Label it: label, variety, day.", "Into the cold, and dark.");
    }

    @Test
    void smallBulbsAreCoveredAndAnAmaryllisStandsHalfOut() {
        assertThat(says(Kind.of("crocus"), Way.DRAINED)).contains("Covered wholly.");
        assertThat(says(Kind.of("amaryllis"), Way.DRAINED))
                .contains("The top half of the bulb stands out; one source says the top third.")
                .noneMatch(step -> step.contains("Sources differ"))
                .endsWith("To its place: it needs no cold.");
    }

    @Test
    void aGlassHasNoHolesAndItsWaterLevelIsDisputed() {
        assertThat(says(Kind.of("hyacinth"), Way.GLASS))
                .startsWith("Set the bulb in the neck of the glass.", "Fill up with water to just below the bulb.")
                .contains("Others let the water just touch the bulb,")
                .noneMatch(step -> step.contains("oles"));
        assertThat(says(Kind.of("paperwhite"), Way.PEBBLES)).startsWith("Set the bulbs on the pebbles, not touching.");
        assertThat(says(Kind.of("paperwhite"), Way.BOWL))
                .contains("Water, then tip the bowl until what is too much has run out.")
                .noneMatch(step -> step.contains("saucer") || step.contains("oles"));
    }

    @Test
    void everyStepNamesSourcesOfTheHandbook() {
        for (KindEntry kind : Handbook.standard().kinds()) {
            for (Way way : Way.values()) {
                assertThat(new PottingSteps(Handbook.standard(), kind.kind(), way).steps())
                        .allSatisfy(step -> assertThat(step.sources())
                                .isNotEmpty()
                                .allMatch(key -> Handbook.standard().source(key).isPresent()));
            }
        }
        assertThat(says(Kind.of("sill lily"), Way.DRAINED)).endsWith("Into the cold, and dark.");
    }

    /** Iowa State 2015: 5 to 7; Missouri Botanical Garden: 5 to 6; Delaware 2017 and Nebraska 2020: 6. */
    @Test
    void bulbsInAPotAreSaidSourceBySource() {
        assertThat(new PottingSteps(Handbook.standard(), new Kind("tulip", "Triumph"), Way.GLASS).perPot())
                .as("a glass takes one")
                .isEmpty();
        assertThat(new PottingSteps(Handbook.standard(), new Kind("tulip", "Triumph"), Way.DRAINED).perPot())
                .containsExactly(
                        new PottingSteps.Step("5 to 7 bulbs", List.of("isu-2015")),
                        new PottingSteps.Step("5 to 6 bulbs", List.of("missouri-garden")),
                        new PottingSteps.Step("6 bulbs", List.of("delaware-2017")),
                        new PottingSteps.Step("6 bulbs", List.of("nebraska-2020")));
    }
}
