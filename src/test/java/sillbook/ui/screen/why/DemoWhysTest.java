// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.app.demo.Demo;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Why;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.State;
import sillbook.words.WhyWords;

/** Every figure that any line of any page of the demo gives a reason for comes out of its own record again. */
class DemoWhysTest {
    private static final Journal DEMO = Demo.journal();

    private final Desk desk = Desk.over(DEMO);

    /** The reasons given on every line of the page that is open, from its first line to its last. */
    private List<Why<?>> onPage() {
        List<Why<?>> all = new ArrayList<>();
        State last;
        desk.press("Home");
        do {
            last = desk.state();
            all.addAll(onLine());
            desk.press("Down");
        } while (!desk.state().equals(last));
        return all;
    }

    /** The reasons given on the line under the cursor; the page stays as it was. */
    private List<Why<?>> onLine() {
        desk.press("w");
        if (desk.state().top() instanceof WhySlip slip) {
            desk.press("Esc");
            return slip.whys();
        }
        return List.of();
    }

    /** The reasons on the card of every line. */
    private List<Why<?>> onCards() {
        List<Why<?>> all = new ArrayList<>();
        State last;
        desk.press("Home");
        do {
            last = desk.state();
            desk.press("Enter");
            if (desk.state().layers().over().size() > last.layers().over().size()) {
                all.addAll(onPage());
                desk.press("Esc");
            }
            desk.press("Down");
        } while (!desk.state().equals(last));
        return all;
    }

    private void hold(List<Why<?>> whys) {
        WhyWords words = new WhyWords(DEMO, Handbook.standard());
        assertThat(whys).allSatisfy(why -> {
            assertThat(why.recomputed()).isEqualTo(why.result());
            assertThat(why.sources())
                    .isNotEmpty()
                    .allSatisfy(
                            key -> assertThat(Handbook.standard().source(key)).isPresent());
            assertThat(words.say(why).rule()).isNotBlank();
            assertThat(words.say(why).sum()).isNotEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource({"1,60", "2,100", "3,2", "7,100"})
    void everyReasonOnAPageIsWorkedOutAgain(String page, int atLeast) {
        desk.press(page);
        List<Why<?>> whys = onPage();

        assertThat(whys).hasSizeGreaterThanOrEqualTo(atLeast);
        hold(whys);
    }

    @ParameterizedTest
    @CsvSource({"2,100", "3,100"})
    void everyReasonOnACardIsWorkedOutAgain(String page, int atLeast) {
        desk.press(page);
        List<Why<?>> whys = onCards();

        assertThat(whys).hasSizeGreaterThanOrEqualTo(atLeast);
        hold(whys);
    }

    /** Purchases and records are shown as they were written; nothing of them is worked out. */
    @Test
    void theBulbsShowNoFigureThatIsWorkedOut() {
        desk.press("4");

        assertThat(onPage()).isEmpty();
    }

    @Test
    void theDemoGivesReasonsByEveryRuleThereIs() {
        Set<Class<?>> rules = new HashSet<>();
        for (String page : List.of("1", "2", "3")) {
            desk.press(page);
            onPage().forEach(why -> rules.add(why.getClass()));
        }

        assertThat(Why.class.getPermittedSubclasses())
                .allSatisfy(rule -> assertThat(rules).anyMatch(rule::isAssignableFrom));
    }
}
