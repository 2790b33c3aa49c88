// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Edit;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.words.Complaint;
import sillbook.words.Shelves;

class FormsTest {
    static Stream<String> examples() {
        return QuickLine.forms().stream().flatMap(form -> form.examples().stream());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsUnderstoodToItsLastWord(String line) {
        LineReading reading = QuickLine.read(line, withPlans(Shelves.bench()));

        assertThat(reading.unknown()).isEmpty();
        assertThat(reading.complaint().map(Complaint::brief)).isNotEqualTo(Optional.of("more than one"));
    }

    /** Plans are named by their letters, so there are two. */
    private static Bench withPlans(Bench bench) {
        List<Edit> plans = List.of(
                new Edit.Put(plan(bench, bench.journal().chosenFor(bench.today()), "A")),
                new Edit.Put(plan(bench, new Season(2027), "B")));
        return new Bench(bench.journal().with(plans), bench.outlook(), bench.handbook(), bench.ids());
    }

    private static SeasonPlan plan(Bench bench, Season season, String name) {
        LocalDate day = LocalDate.of(2027, 12, 20);
        return new SeasonPlan(
                bench.ids().next(),
                season,
                name,
                new SeasonPlan.Rule(2, 12, day, day, 4, Set.of()),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    @Test
    void everyFormIsNamedOnceAndShown() {
        List<FormHelp> forms = QuickLine.forms();

        assertThat(forms).extracting(FormHelp::name).doesNotHaveDuplicates().doesNotContain("");
        assertThat(forms).allSatisfy(form -> {
            assertThat(form.says()).endsWith(".");
            assertThat(form.examples()).isNotEmpty();
        });
    }

    @Test
    void noKeywordLeadsToTwoForms() {
        assertThat(Forms.ALL.stream().flatMap(form -> form.keywords().stream())).doesNotHaveDuplicates();
    }
}
