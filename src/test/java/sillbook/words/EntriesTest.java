// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Findings;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Stage;
import sillbook.model.Variety;

class EntriesTest {
    private static final Journal JOURNAL = Shelves.bench().journal();
    private static final LocalDate FRIDAY = LocalDate.of(2027, 1, 15);

    static Stream<Arguments> happenings() {
        Place cellar = JOURNAL.places().all().stream()
                .filter(place -> place.name().equals("cellar"))
                .findFirst()
                .orElseThrow();
        Variety inkwell = JOURNAL.varieties().all().stream()
                .filter(variety -> variety.name().equals("Inkwell"))
                .findFirst()
                .orElseThrow();
        return Stream.of(
                arguments(new Happening.Potted(), "potted"),
                arguments(new Happening.Moved(cellar.id(), Stage.COLD), "into the cold, cellar"),
                arguments(new Happening.Checked(Findings.ALL_WELL), "checked: moist"),
                arguments(new Happening.Checked(Findings.NOTHING), "checked: nothing noted"),
                arguments(
                        new Happening.Checked(
                                Findings.NOTHING.with(Trouble.FROST).withNote("two noses soft")),
                        "trouble seen: frost, two noses soft"),
                arguments(
                        new Happening.Checked(
                                Findings.NOTHING.with(Trouble.OTHER).withNote("leaning")),
                        "trouble seen: leaning"),
                arguments(new Happening.Flowered(BloomPoint.FIRST_FLOWER, Optional.empty()), "first flower"),
                arguments(
                        new Happening.Flowered(BloomPoint.PAST_BLOOM, Optional.of(inkwell.id())),
                        "past bloom of 'Inkwell'"),
                arguments(new Happening.Cared(Care.PLANTED_OUT), "planted out"),
                arguments(new Happening.Closed(End.GIVEN, ""), "given away"),
                arguments(new Happening.Closed(End.FAILED, "frost"), "failed: frost"),
                arguments(
                        new Happening.PutOff(JobKind.BRING_IN, FRIDAY, "no room"),
                        "bring in: put off to Fri 15 Jan, because no room"),
                arguments(new Happening.LeftOut(JobKind.CHECK, ""), "check: not at all"),
                arguments(new Happening.Jotted("flat sides to the rim"), "jotted: flat sides to the rim"),
                arguments(new Happening.Displayed(Optional.of("hall table")), "into display hall table"),
                arguments(new Happening.Displayed(Optional.empty()), "out of the display"));
    }

    @ParameterizedTest
    @MethodSource("happenings")
    void everySortOfEntryReadsAsASentence(Happening what, String says) {
        assertThat(new Entries(JOURNAL).say(what)).isEqualTo(says);
    }

    @Test
    void allThatWasFoundIsSaidInOneOrder() {
        Findings found = Findings.NOTHING
                .with(Trouble.MOULD)
                .with(Growth.COLOUR)
                .with(Growth.BUDS)
                .withShoot(new Length(900, "9 cm"))
                .withRoots(Roots.SHOWING)
                .withMoisture(Moisture.DRY)
                .withWatered(true)
                .withNote("one")
                .withNote("two");

        assertThat(Entries.findings(found, LengthUnit.CENTIMETRES))
                .isEqualTo("dry, watered, roots, shoot 9 cm, buds, colour, mould, one; two");
        assertThat(Entries.findings(found, LengthUnit.INCHES)).contains("shoot 3.5 in");
    }

    @Test
    void whatWasDoneAboutTheWaterFollowsWhatWasSeen() {
        Findings low = Findings.NOTHING.withWater(Water.LOW).withWatered(true);

        assertThat(Entries.findings(low, LengthUnit.CENTIMETRES)).isEqualTo("water low, topped up");
        assertThat(Entries.findings(low.with(Trouble.CLOUDY), LengthUnit.CENTIMETRES))
                .isEqualTo("water low, water changed, water cloudy");
        assertThat(Entries.findings(
                        Findings.WATER_WELL.withRootLength(new Length(600, "6 cm")), LengthUnit.CENTIMETRES))
                .isEqualTo("water right, roots 6 cm");
        assertThat(Entries.findings(
                        Findings.NOTHING.withRootLength(Length.ofCentimetres(0)).withFirmness(Firmness.SOFT),
                        LengthUnit.CENTIMETRES))
                .isEqualTo("no roots yet, soft");
    }

    @Test
    void onlyACheckThatFoundNothingElseIsAllWell() {
        assertThat(Entries.isAllWell(Findings.ALL_WELL)).isTrue();
        assertThat(Entries.isAllWell(Findings.WATER_WELL)).isTrue();
        assertThat(Entries.isAllWell(Findings.DRY_WELL)).isTrue();
        assertThat(Entries.isAllWell(Findings.ALL_WELL.withRoots(Roots.SHOWING)))
                .isFalse();
        assertThat(Findings.NOTHING.with(Trouble.MICE).troubles()).isEqualTo(Set.of(Trouble.MICE));
    }
}
