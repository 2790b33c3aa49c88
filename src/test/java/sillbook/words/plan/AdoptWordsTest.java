// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Labels;
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
                        + " bulbs of purchases are kept for them; 5 bulbs for them are in no purchase yet.");
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

    /** The usual plan, adopted. */
    private SeasonPlan adopted() {
        SeasonPlan first = house.plan();
        house.put(first);
        house.apply(Adopting.of(house.now(first), new Kinds(house.journal(), Handbook.standard())));
        return SeasonPlan.of(AugustHouse.SEASON, house.journal()).get(0);
    }

    private String label(Proposal pot) {
        return house.journal().pots().get(pot.pot().orElseThrow()).label();
    }

    private String labels(List<Proposal> pots) {
        return Labels.say(pots.stream().map(this::label).toList());
    }

    private static Proposal later(Proposal pot) {
        Proposal.Course course = pot.course();
        return pot.on(new Proposal.Course(
                course.potting().plusDays(2), course.cold(), course.in().plusDays(2), course.room()));
    }

    @Test
    void saysWhichPotsGetNewDays() {
        List<Proposal> pots = adopted().pots();
        assertThat(lines(house.plan(pots, Optional.empty())))
                .containsExactly(
                        "No pot is made: all of them are there.",
                        labels(pots) + " are there already and keep their days and places.",
                        "Plan A, adopted on 20 Aug, is laid aside.");
        List<Proposal> moved = new ArrayList<>(pots);
        moved.set(1, later(pots.get(1)));
        assertThat(lines(house.plan(moved, Optional.empty())))
                .contains(labels(pots) + " are there already: " + label(pots.get(1))
                        + " gets new days or places, the rest keep theirs.");
        moved.set(2, later(pots.get(2)));
        assertThat(lines(house.plan(moved, Optional.empty())))
                .contains(labels(pots) + " are there already: " + labels(pots.subList(1, 3))
                        + " get new days or places, the rest keep theirs.");
        assertThat(lines(house.plan(moved.subList(1, 3), Optional.empty())))
                .contains(labels(pots.subList(1, 3)) + " are there already and get new days or places.");
        assertThat(lines(house.plan(moved.subList(1, 2), Optional.empty())))
                .contains(label(pots.get(1)) + " is there already and gets new days or places.");
        assertThat(lines(house.plan(moved.subList(0, 1), Optional.empty())))
                .contains(label(pots.get(0)) + " is there already and keeps its days and places.");
    }

    @Test
    void saysWhichPotsOfThePlanAdoptedBeforeGo() {
        List<Proposal> pots = adopted().pots();
        int last = pots.size() - 1;
        assertThat(goes(pots.subList(0, last)))
                .containsExactly(label(pots.get(last)) + ", never potted and not in this plan, goes.");
        assertThat(goes(pots.subList(0, 1)))
                .containsExactly(labels(pots.subList(1, last + 1)) + ", never potted and not in this plan, go.");
    }

    @Test
    void saysWhichNotesGoWithThem() {
        List<Proposal> pots = adopted().pots();
        String one = label(pots.get(1));
        String other = label(pots.get(2));
        house.write("note " + label(pots.get(0)) + ": stays", "note " + one + ": rim is chipped");
        assertThat(goes(pots.subList(0, 1))).last().isEqualTo("1 note about " + one + " goes with it.");
        house.write("pot " + one + ", note by the door");
        assertThat(goes(pots.subList(0, 1))).last().isEqualTo("2 notes about " + one + " go with it.");
        house.write("note " + other + ": for the neighbours");
        assertThat(goes(pots.subList(0, 1)))
                .last()
                .isEqualTo("3 notes about " + Labels.say(List.of(one, other)) + " go with them.");
    }

    private List<String> goes(List<Proposal> pots) {
        return new AdoptWords(house.journal(), house.now(house.plan(pots, Optional.empty()))).goes();
    }

    @Test
    void whatWasPottedStays() {
        List<Proposal> pots = adopted().pots();
        List<Proposal> fewer = pots.subList(0, pots.size() - 1);
        house.on(LocalDate.of(2026, 12, 1)).write(label(pots.get(pots.size() - 1)) + " potted, cellar");
        assertThat(lines(house.plan(fewer, Optional.empty())))
                .last()
                .isEqualTo("Plan A, adopted on 20 Aug, is laid aside.");
    }
}
