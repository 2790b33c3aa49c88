// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.words.Kinds;

class AdoptWordsTest {
    private final AugustHouse house = AugustHouse.usual();

    private List<String> lines(SeasonPlan plan) {
        return new AdoptWords(house.journal(), house.now(plan)).lines();
    }

    @Test
    void saysHowManyPotsWaitAndWhichBulbsAreKept() {
        SeasonPlan plan = house.plan();
        int pots = plan.pots().size();
        int bulbs = plan.pots().stream().mapToInt(Proposal::bulbs).sum();
        assertThat(lines(plan))
                .containsExactly(
                        pots + " pots get their labels and wait to be potted, each with its days and places.",
                        bulbs + " bulbs of purchases are kept for them.");
        assertThat(lines(house.plan(plan.pots().subList(0, 1), Optional.empty())))
                .first()
                .asString()
                .startsWith("1 pot gets its label and waits to be potted");
    }

    @Test
    void saysWhichBulbsAreInNoPurchase() {
        house.write("choose 10 Marrow Lane");
        SeasonPlan plan = house.plan();
        List<Proposal> unbought = plan.pots().stream()
                .map(pot -> new Proposal(pot.variety(), 5, Optional.empty(), pot.container(), pot.pot(), pot.course()))
                .limit(2)
                .toList();
        assertThat(lines(house.plan(unbought, Optional.empty()))).contains("10 bulbs for them are in no purchase yet.");
        Proposal bought = plan.pots().get(0);
        assertThat(lines(house.plan(List.of(unbought.get(0), bought), Optional.empty())))
                .contains(bought.bulbs()
                        + " bulbs of purchases are kept for them. 5 bulbs for them are in no purchase yet.");
    }

    @Test
    void countsTheWishesThatHavePots() {
        house.write(
                "wish hyacinth 14 feb 2027", "wish squill 15 feb 2027", "wish something every day 1 jan to 1 feb 2027");
        assertThat(lines(house.plan()))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("Wishes for a day that have pots meant for them: ")
                        .endsWith(" of 2."));
    }

    @Test
    void saysWhatThePlanAdoptedBeforeLoses() {
        SeasonPlan first = house.plan();
        house.put(first);
        house.apply(Adopting.of(house.now(first), new Kinds(house.journal(), Handbook.standard())));
        SeasonPlan adopted = SeasonPlan.of(AugustHouse.SEASON, house.journal()).get(0);
        int pots = adopted.pots().size();

        assertThat(lines(house.plan(adopted.pots(), Optional.empty())))
                .containsExactly(
                        "No pot is made: all of them are there.",
                        pots + " pots that are there already go on by the plan's days.",
                        "Plan A, adopted on 20 Aug, is laid aside.");
        List<Proposal> fewer = adopted.pots().subList(0, pots - 1);
        assertThat(lines(house.plan(fewer, Optional.empty())))
                .last()
                .isEqualTo("Plan A, adopted on 20 Aug, is laid aside, and 1 pot of it that was never potted goes.");
        assertThat(lines(house.plan(adopted.pots().subList(0, 1), Optional.empty())))
                .contains("1 pot that is there already goes on by the plan's days.")
                .last()
                .asString()
                .endsWith(", and " + (pots - 1) + " pots of it that were never potted go.");
    }

    @Test
    void whatWasPottedStays() {
        SeasonPlan first = house.plan();
        house.put(first);
        house.apply(Adopting.of(house.now(first), new Kinds(house.journal(), Handbook.standard())));
        SeasonPlan adopted = SeasonPlan.of(AugustHouse.SEASON, house.journal()).get(0);
        String label = house.journal()
                .pots()
                .get(adopted.pots().get(adopted.pots().size() - 1).pot().orElseThrow())
                .label();
        house.on(LocalDate.of(2026, 12, 1)).write(label + " potted, cellar");
        assertThat(lines(house.plan(adopted.pots().subList(0, adopted.pots().size() - 1), Optional.empty())))
                .last()
                .isEqualTo("Plan A, adopted on 20 Aug, is laid aside.");
    }
}
