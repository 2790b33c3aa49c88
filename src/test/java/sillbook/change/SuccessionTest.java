// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Pot;

/** Today is 12 January 2027. Ten to fourteen days lie between two pots that are brought in (Iowa State University Extension). */
class SuccessionTest {
    private final Bench bench = new Bench();

    private Id<Pot> pot(String label) {
        return bench.journal.pot(Bench.WINTER, label).orElseThrow().id();
    }

    private Id<Pot> potted() {
        bench.done(Bench.tulips(1, "P1"));
        return pot("P1");
    }

    private Id<Pot> waiting() {
        bench.done(Bench.pots(1, "P1", java.util.Optional.empty(), java.util.Optional.empty()));
        return pot("P1");
    }

    private LocalDate potOn(String label) {
        return bench.journal.history(pot(label)).stream()
                .map(event -> event.what())
                .map(Happening.PutOff.class::cast)
                .peek(put -> assertThat(put.job()).isEqualTo(JobKind.POT_UP))
                .map(Happening.PutOff::until)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachPotWaitsForItsOwnDayCountedOnFromTheModel() {
        Step step = bench.done(new Succession(potted(), 14, LocalDate.of(2027, 2, 28)));

        assertThat(step.name()).isEqualTo("P2-P4 like P1, to be potted every 14 days");
        assertThat(List.of(potOn("P2"), potOn("P3"), potOn("P4")))
                .containsExactly(LocalDate.of(2027, 1, 20), LocalDate.of(2027, 2, 3), LocalDate.of(2027, 2, 17));
        Pot model = bench.journal.pots().get(pot("P1"));
        Pot second = bench.journal.pots().get(pot("P2"));
        assertThat(second.plantings()).isEqualTo(model.plantings());
        assertThat(second.batch()).as("they part on the first day").isEmpty();
    }

    @Test
    void aModelThatWaitsItselfIsCountedFromToday() {
        bench.done(new Succession(waiting(), 10, LocalDate.of(2027, 1, 31)));

        assertThat(potOn("P2")).isEqualTo(LocalDate.of(2027, 1, 22));
        assertThat(bench.journal.pot(Bench.WINTER, "P3")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4  | 2027-03-01 | Every 4 days is no usual row: 10 to 14 days are, and 5 to 28 can be written.
            29 | 2027-03-01 | Every 29 days is no usual row: 10 to 14 days are, and 5 to 28 can be written.
            12 | 2027-01-13 | Up to Wed 13 Jan 2027 no other potting falls due. Write a later last day.
            12 | 2027-12-01 | Wed 1 Dec 2027 is too far ahead for one winter. Write an earlier last day.
            """)
    void aSlipOfTheFingerChangesNothing(int every, LocalDate until, String sentence) {
        assertThat(bench.refused(new Succession(potted(), every, until))).isEqualTo(sentence);
    }

    @Test
    void itNamesItsModel() {
        assertThat(bench.refused(new Succession(new Id<>(9, 9), 12, LocalDate.of(2027, 3, 1))))
                .isEqualTo(Bench.GONE);
    }
}
