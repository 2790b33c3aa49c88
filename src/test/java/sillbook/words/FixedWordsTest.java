// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Stage;
import sillbook.reckon.dates.Milestone;
import sillbook.season.Verdict;

class FixedWordsTest {
    private static final Settings METRIC = Settings.initial(ZoneOffset.UTC);
    private static final Settings IMPERIAL = new Settings(
            METRIC.zone(), METRIC.seasonStart(), TemperatureUnit.FAHRENHEIT, LengthUnit.INCHES, Colours.ASK, true);

    @Test
    void everyStageIsSaidAsAMoveAndAsAState() {
        assertThat(Stream.of(Stage.values()).map(StageWords::into))
                .containsExactly(
                        "back to waiting",
                        "into the cold",
                        "into the cool room",
                        "into the warm room",
                        "in bloom",
                        "after bloom",
                        "done");
        assertThat(Stream.of(Stage.values()).map(StageWords::in))
                .containsExactly(
                        "waiting",
                        "in the cold",
                        "in the cool room",
                        "in the warm room",
                        "in bloom",
                        "after bloom",
                        "done");
        assertThat(Stream.of(Milestone.values()).map(MilestoneWords::say))
                .containsExactly("cold", "cool room", "warm room", "first flower", "past bloom");
    }

    @ParameterizedTest
    @CsvSource({
        "MAY_COME_IN,may come in",
        "CHECK_FIRST,check first",
        "NO_ROOTS,not ready: no roots yet",
        "WEEKS_SHORT,not cold enough yet",
        "TOO_WARM,too warm here"
    })
    void everyVerdictHasItsWords(Verdict verdict, String brief) {
        assertThat(VerdictWords.brief(verdict)).isEqualTo(brief);
    }

    @ParameterizedTest
    @CsvSource({
        "COLD,'12, 15, 17 wk','12, 15, 17 wk'",
        "IN_BLOOM,'12, 15, 17 days','12, 15, 17 days'",
        "COLD_BAND,'12, 15, 17 C','53.6, 59, 62.6 F'",
        "HEIGHT,'12, 15, 17 cm','4.7, 5.9, 6.7 in'",
        "PER_POT,'12, 15, 17 bulbs','12, 15, 17 bulbs'",
        "EXPOSED,'12, 15, 17','12, 15, 17'"
    })
    void figuresAreSaidInTheGrowersUnits(FigureName name, String metric, String imperial) {
        Range range = new Range(12, 15, 17);

        assertThat(FigureValues.say(name, range, METRIC)).isEqualTo(metric);
        assertThat(FigureValues.say(name, range, IMPERIAL)).isEqualTo(imperial);
    }

    @ParameterizedTest
    @CsvSource({"COLD,15", "IN_BLOOM,10", "COLD_BAND,5 C", "HEIGHT,45 cm", "PER_POT,5", "EXPOSED,0.5"})
    void aFigureIsOneValueOrThree(FigureName name, String value) {
        assertThat(FigureValues.parse(name, List.of(value)).value())
                .hasValueSatisfying(range -> assertThat(range.low()).isEqualTo(range.high()));
        assertThat(FigureValues.parse(name, List.of(value, value, value)).value())
                .isPresent();
        assertThat(FigureValues.parse(name, List.of(value, value)).value()).isPresent();
        assertThat(FigureValues.parse(name, List.of()).complaint()).isPresent();
        assertThat(FigureValues.parse(name, List.of("many")).complaint()).isPresent();
    }

    @Test
    void valuesOutOfOrderAreRefused() {
        assertThat(FigureValues.parse(FigureName.COLD, List.of("17", "15", "12"))
                        .complaint())
                .isPresent();
        assertThat(FigureValues.parse(FigureName.COLD, List.of("12", "17", "15"))
                        .complaint())
                .isPresent();
    }

    @Test
    void everyOriginSaysWhoseTheFigureIs() {
        SourceWords words = new SourceWords(Handbook.standard(), METRIC);
        assertThat(Stream.of(Origin.values())
                        .map(origin -> words.figure(
                                new FigureInForce(FigureName.COLD, Range.of(15), origin, Optional.empty()))))
                .allSatisfy(said -> assertThat(said).contains("15 wk"))
                .anySatisfy(said -> assertThat(said).contains("your own, for the variety"))
                .anySatisfy(said -> assertThat(said).contains("your own, for the kind"))
                .anySatisfy(said -> assertThat(said).contains("your own, for all hardy kinds"))
                .anySatisfy(said -> assertThat(said).contains("handbook, bulbs at large"))
                .anySatisfy(said -> assertThat(said).contains("assumed, as for hardy bulbs"));
    }
}
