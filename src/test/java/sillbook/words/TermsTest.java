// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.handbook.FigureName;
import sillbook.model.Cause;
import sillbook.model.Container.Shape;
import sillbook.model.Failure;
import sillbook.model.Failure.Sign;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Impression.Evenness;
import sillbook.model.JobKind;
import sillbook.model.Outcome.Again;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Pot.Way;
import sillbook.model.Purchase.State;
import sillbook.model.Settings.Colours;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Stage;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;
import sillbook.model.WishedFor.FlowerStage;
import sillbook.reckon.dates.Feast;

class TermsTest {
    static Stream<Arguments> all() {
        return Stream.of(
                arguments(Terms.STAGES, Stage.values()),
                arguments(PlaceTerms.SORTS, Sort.values()),
                arguments(PlaceTerms.HAZARDS, Hazard.values()),
                arguments(Terms.SHAPES, Shape.values()),
                arguments(Terms.SCENTS, Scent.values()),
                arguments(Terms.PACKETS, PacketForcing.values()),
                arguments(Terms.STATES, State.values()),
                arguments(Terms.WAYS, Way.values()),
                arguments(Terms.MOISTURES, Moisture.values()),
                arguments(Terms.WATERS, Water.values()),
                arguments(Terms.FIRMNESSES, Firmness.values()),
                arguments(Terms.ROOTS, Roots.values()),
                arguments(Terms.GROWTHS, Growth.values()),
                arguments(Terms.TROUBLES, Trouble.values()),
                arguments(Terms.BLOOM_POINTS, BloomPoint.values()),
                arguments(Terms.CARES, Care.values()),
                arguments(Terms.ENDS, End.values()),
                arguments(Terms.SIGNS, Sign.values()),
                arguments(Terms.FAILED_ROOTS, Failure.Roots.values()),
                arguments(Terms.CAUSES, Cause.values()),
                arguments(Terms.AGAINS, Again.values()),
                arguments(OutcomeTerms.EVENNESSES, Evenness.values()),
                arguments(OutcomeTerms.SCENTS_FOUND, Scent.values()),
                arguments(Terms.JOBS, JobKind.values()),
                arguments(Terms.TEMPERATURE_UNITS, TemperatureUnit.values()),
                arguments(Terms.LENGTH_UNITS, LengthUnit.values()),
                arguments(ColourTerms.COLOURS, Colours.values()),
                arguments(Terms.FIGURES, FigureName.values()),
                arguments(WishTerms.STAGES, FlowerStage.values()),
                arguments(Feasts.ALL, Feast.values()));
    }

    @ParameterizedTest
    @MethodSource("all")
    <T> void everyOneHasItsWordAndReadsBack(Vocabulary<T> vocabulary, T[] values) {
        for (T value : values) {
            assertThat(vocabulary.parse(vocabulary.say(value))).isEqualTo(Heard.as(value));
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    <T> void noWordStandsForTwo(Vocabulary<T> vocabulary, T[] values) {
        List<String> words = vocabulary.terms().stream()
                .flatMap(Vocabulary.Term::words)
                .distinct()
                .toList();

        assertThat(words).allSatisfy(word -> assertThat(vocabulary.find(word)).isPresent());
    }

    @ParameterizedTest
    @CsvSource({
        "Cool Room, COOL_ROOM",
        "COOL,      COOL_ROOM",
        "into the cool room, COOL_ROOM",
        "wait,      WAITING",
        "past,      ",
        "w,         ",
        "'',        ",
    })
    void aStageIsFoundInAnyCaseAndByItsBeginning(String word, Stage stage) {
        assertThat(Terms.STAGES.find(word).orElse(null)).isEqualTo(stage);
    }

    @Test
    void whatIsMisspeltIsGuessedAtAndWhatIsUnknownListed() {
        assertThat(Terms.MOISTURES.parse("moits"))
                .isEqualTo(Heard.not("no moisture", "'moits' is no moisture. Did you mean moist?"));
        assertThat(Terms.MOISTURES.parse("so-so"))
                .isEqualTo(Heard.not("no moisture", "'so-so' is no moisture. Write dry, moist or wet."));
    }

    @Test
    void aBeginningLeavesSeveralOpen() {
        assertThat(Terms.STAGES.beginning("w")).containsExactly(Stage.WAITING, Stage.WARM_ROOM);
        assertThat(Terms.STAGES.findWhole("w")).isEmpty();
        assertThat(Terms.STAGES.findWhole("Warm")).contains(Stage.WARM_ROOM);
    }

    @Test
    void aThingOfAnotherSetHasNoWord() {
        Vocabulary<Object> few = new Vocabulary<>("few", List.of());

        assertThatThrownBy(() -> few.say(1)).hasMessage("no word for the few 1");
    }
}
