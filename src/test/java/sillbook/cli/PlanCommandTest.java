// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

class PlanCommandTest {
    @TempDir
    private Path home;

    /** A book that begins; the terminal's day is in January, so the coming season is the next. */
    private Terminal book() {
        Terminal terminal = Terminal.at(home);
        for (String line : List.of(
                "place garage fridge, fridge, room 9",
                "place kitchen sill, warm sill, room 4",
                "container pan 15 cm, pan, 2 of them, 1 unwashed",
                "choose 15 Lantern Row (daffodil)",
                "choose 9 Inkwell (hyacinth)",
                "choose 24 Night Marbles (grape hyacinth)",
                "wish something every day 20 jan to 10 feb 2028")) {
            assertThat(terminal.run("write", line).code()).as(line).isEqualTo(ExitCode.DONE);
        }
        return terminal;
    }

    private static JsonNode json(Printed printed) throws JsonProcessingException {
        return new ObjectMapper().readTree(printed.out());
    }

    @Test
    void whereNothingIsKeptTheHandRuleIsShown() {
        Printed printed = book().run("plan");
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.err()).isEmpty();
        assertThat(printed.out())
                .startsWith("plan A for season 2027-28, by hand, not kept: ")
                .contains("\nwish: 20 Jan-10 Feb: ", "\nplan A: ", ", proven best: by hand\n", "\ncare: ");
    }

    @Test
    void theBestIsSoughtKeptAndAdopted() throws JsonProcessingException {
        Terminal terminal = book();
        Printed best = terminal.run("plan", "--best", "--keep", "b", "--adopt");
        assertThat(best.code()).isEqualTo(ExitCode.DONE);
        assertThat(best.err())
                .contains("best so far: ", "The best", "plan B of 2027-28 written down\n", "plan B adopted, ");
        assertThat(best.out()).startsWith("plan B for season 2027-28, searched for, adopted ");

        JsonNode answer = json(terminal.run("plan", "--json"));
        assertThat(answer.get("name").textValue()).isEqualTo("B");
        assertThat(answer.get("kept").booleanValue()).isTrue();
        assertThat(answer.get("bloom").get("gapDays").intValue()).isZero();
        assertThat(answer.get("wishes").get(0).get("met").booleanValue()).isTrue();
        List<String> pots = new ArrayList<>();
        answer.get("pots").forEach(pot -> pots.add(pot.get("pot").textValue()));
        assertThat(pots).isNotEmpty().doesNotContainNull().doesNotHaveDuplicates();
        assertThat(terminal.run("undo").out()).startsWith("taken back: plan B adopted");
    }

    @Test
    void adoptingAnotherSaysWhichPotsGo() {
        Terminal terminal = book();
        terminal.run("write", "plan 1 every 7 days from 20 dec to 1 mar");
        terminal.run("write", "plan 1 every 30 days from 20 dec to 1 mar");
        assertThat(terminal.run("plan", "A", "--adopt").err())
                .contains("\n11 pots get their labels and wait to be potted, each with its days and places.\n");
        assertThat(terminal.run("plan", "B", "--adopt").err())
                .contains(
                        "\nPlan A, adopted on 12 Jan, is laid aside.\n! ",
                        ", never potted and not in this plan, go.\n");
    }

    @Test
    void whatAnAdoptedPlanLacksIsAskedForOnTheDay() throws JsonProcessingException {
        Terminal terminal = book();
        assertThat(terminal.run("plan", "--best", "--keep", "b", "--adopt").code())
                .isEqualTo(ExitCode.DONE);
        JsonNode bulbs = json(terminal.run("supplies", "--json")).get("bulbs").get(0);
        String last = bulbs.get("orderBy").textValue();

        assertThat(terminal.run("today", "--on", last).out())
                .contains("\nTo order\n  order " + bulbs.get("wanting") + " ", " for plan B, by ");
        JsonNode order = json(terminal.run("today", "--on", last, "--json"))
                .get("orders")
                .get(0);
        assertThat(order.get("variety")).isEqualTo(bulbs.get("variety"));
        assertThat(order.get("orderBy")).isEqualTo(bulbs.get("orderBy"));
        assertThat(order.get("late").booleanValue()).isFalse();
    }

    @Test
    void aPlanIsKeptBesideAnother() throws JsonProcessingException {
        Terminal terminal = book();
        assertThat(terminal.run("write", "plan 1 every 14 days").code()).isEqualTo(ExitCode.DONE);
        assertThat(terminal.run("plan", "--keep", "C").err()).isEqualTo("plan C of 2027-28 written down\n");
        JsonNode answer = json(terminal.run("plan", "a", "--json"));
        assertThat(answer.get("name").textValue()).isEqualTo("A");
        assertThat(answer.get("plans"))
                .extracting(plan -> plan.get("plan").textValue())
                .containsExactly("A", "C");
        assertThat(terminal.run("plan").out()).startsWith("plan C for season 2027-28, by hand: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Q             | 1 | No plan of season 2027-28 is called 'Q'. There is A.",
                "--keep A      | 1 | There is a plan A of 2027-28 already. Open that one, or write another name.",
                "--keep=a-plan | 2 | 'a-plan' is no letter to keep a plan under. Write one, as B.",
                "--seconds=NaN | 2 | 'NaN' is no number. Write it as 350 or 4.5.",
                "--seconds=-1  | 2 | '-1' is no time to search in. Write a number of seconds above 0.",
                "--season=soon | 2 | 'soon' is no season. Write it as 2025-26, or as 2025."
            })
    void whatCannotBeIsSaidAndNothingIsKept(String arguments, int code, String says) {
        Terminal terminal = book();
        terminal.run("write", "plan 1 every 14 days");
        List<String> all = new ArrayList<>(List.of("plan"));
        all.addAll(List.of(arguments.strip().split(" ", -1)));
        Printed printed = terminal.run(all.toArray(String[]::new));
        assertThat(printed.code()).isEqualTo(code);
        assertThat(printed.err()).isEqualTo(says + "\n");
        assertThat(printed.out()).isEmpty();
        assertThat(terminal.run("undo").out()).startsWith("taken back: plan A");
    }

    @Test
    void whatIsNotKeptIsNotAdopted() {
        Terminal terminal = book();
        Printed printed = terminal.run("plan", "--adopt");
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err())
                .isEqualTo("This plan is not kept yet, so it cannot be adopted. Write --keep and a letter too.\n");
        assertThat(terminal.run("plan", "A").err()).endsWith("There is none yet. --keep A keeps one.\n");
    }

    @Test
    void withoutBulbsThereIsNothingToSeek() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place kitchen sill, warm sill, room 4");
        Printed printed = terminal.run("plan", "--best");
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).startsWith("There are no bulbs that can flower in the season.");
        assertThat(terminal.run("supplies").err()).startsWith("Nothing is planned, so nothing is to be had.");
    }

    @Test
    void theSearchEndsInTime() {
        Printed printed = book().run("plan", "--best", "--seconds", "0.05");
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.err()).contains("The best");
    }

    @Test
    void suppliesSayTheSameInBothForms() throws JsonProcessingException {
        Terminal terminal = book();
        Printed plain = terminal.run("supplies");
        JsonNode answer = json(terminal.run("supplies", "--json"));
        int from = 0;
        for (JsonNode bulbs : answer.get("bulbs")) {
            int at = plain.out()
                    .indexOf(bulbs.get("bulbs") + " '" + bulbs.get("variety").textValue() + "'", from);
            assertThat(at).isNotNegative();
            from = at;
        }
        assertThat(answer.get("containers").get(0).get("toWash").intValue()).isEqualTo(1);
        assertThat(plain.out()).contains("pan 15 cm: ", ", 2 free, 1 to wash first, ", "\ncare: ");
        assertThat(terminal.run("supplies", "--plan", "Z").code()).isEqualTo(ExitCode.COULD_NOT);
    }
}
