// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.plan.PlanNow;
import sillbook.words.plan.PlanWhyWords.Section;

class PlanWhyWordsTest {
    private final AugustHouse house = AugustHouse.usual();

    private List<Section> sections(PlanNow now) {
        return new PlanWhyWords(house.planning(), now, Handbook.standard()).sections();
    }

    private static List<String> lines(List<Section> sections, String title) {
        return sections.stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow()
                .lines();
    }

    @Test
    void eachTroubleHasItsCuresUnderIt() {
        house.write("wish something every day 10 jan to 25 mar 2027");
        List<String> lines = lines(sections(house.now()), "What it cannot do");
        int gap = lines.indexOf(lines.stream()
                .filter(line -> line.startsWith("Gap "))
                .findFirst()
                .orElseThrow());
        assertThat(lines.get(gap + 1)).startsWith("  cure: ").endsWith(".");
    }

    @Test
    void aPlanThatCanAllSaysSo() {
        PlanNow now = house.now();
        List<String> nothing = lines(
                new PlanWhyWords(house.planning(), bare(now), Handbook.standard()).sections(), "What it cannot do");
        assertThat(nothing).containsExactly("Nothing: each pot has its cold, its days and its room.");
    }

    private static PlanNow bare(PlanNow now) {
        return new PlanNow(now.plan(), now.pots(), now.ribbon(), now.rooms(), now.wishes(), List.of());
    }

    @Test
    void wishesHaveTheirChanceAndTheLooksBefore() {
        house.write("wish hyacinth 14 feb 2027");
        List<String> lines = lines(sections(house.now()), "Wishes");
        assertThat(lines.get(0)).startsWith("14 Feb, hyacinth: ").contains("chance");
        assertThat(lines).anySatisfy(line -> assertThat(line).contains("buds above the leaves?"));
    }

    @Test
    void whatItRestsOnIsSaidOnceOfEachSort() {
        assertThat(lines(sections(house.now()), "What it rests on"))
                .doesNotHaveDuplicates()
                .anySatisfy(line -> assertThat(line).startsWith("'Lantern Row' x"));
        assertThat(sections(house.now(house.plan(List.of(), Optional.empty()))))
                .extracting(Section::title)
                .containsExactly("What it cannot do", "Chances");
    }
}
