// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.straw;
import static sillbook.season.Winter.winter;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.change.TendGround;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Place.Sort;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Snapshot;

/** The jobs of a trench on Today: done, put off and explained where they stand. */
class GroundRowsTest {
    private static final double[] VALLEY = {-6, -4, 1, 7, 13, 17, 19, 18, 13, 7, 1, -4};

    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .place("trench", Sort.TRENCH)
            .ground(25, Optional.of(straw(10)), VALLEY)
            .pots("T1-T2", "Tuesday Coat", "tulip")
            .potted("1 oct");

    private Desk on(String day) {
        return Desk.over(new Snapshot(house.journal(), house.day(day), 1, 0));
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    /** To the line that says this. */
    private static Desk at(Desk desk, String says) {
        for (int i = 0; i < desk.lines().size(); i++) {
            if (desk.lines().stream().anyMatch(line -> line.startsWith("▸") && line.contains(says))) {
                return desk;
            }
            desk.press("Down");
        }
        throw new AssertionError(says + " is on no line of\n" + all(desk));
    }

    @Test
    void digging() {
        Desk desk = at(on("8 oct"), "dig the trench");

        assertThat(all(desk)).contains(" Trench").contains("by 19 Nov").contains("Dig while the ground is open");
        desk.press("Enter");
        assertThat(all(desk)).contains("Write down: dug, trench").contains("against mice (common practice)");
        assertThat(desk.press("Enter").effects())
                .containsExactly(new Effect.CarryOut(
                        new TendGround(house.placeId("trench"), Care.DUG, Day.on(house.day("8 oct")))));
    }

    @Test
    void aNoteIsOfTheTrench() {
        assertThat(all(at(on("8 oct"), "dig the trench").press("j")))
                .contains("trench")
                .doesNotContain("this season");
    }

    @Test
    void potsIn() {
        Desk desk = at(on("22 oct"), "pots in: 2");

        assertThat(all(desk)).contains("reads 7 C or less on three mornings");
        assertThat(all(desk.press("Enter"))).contains("Move 2 pots: T1-T2").contains("trench");
    }

    @Test
    void noPotWaitsForATrench() {
        house.then("T1-T2").moved("1 oct", "cellar");

        Desk desk = at(on("22 oct"), "pots in  ");
        assertThat(all(desk.press("Enter"))).contains("no potted pot waits for the cold");
    }

    @Test
    void covering() {
        house.then("T1-T2").moved("22 oct", "trench");

        Desk desk = at(on("4 nov"), "cover the trench");
        assertThat(all(desk.press("Enter"))).contains("Write down: covered, trench");
    }

    @Test
    void lifting() {
        house.then("T1-T2").moved("22 oct", "trench");

        Desk desk = at(on("26 dec"), "lift before frost: 2");
        assertThat(all(desk.press("Enter"))).contains("Move 2 pots: T1-T2");
    }

    @Test
    void anotherDayWhyAndANote() {
        Desk desk = at(on("8 oct"), "dig the trench");

        assertThat(all(desk.press("a"))).contains("Another day for trench, dig the trench");
        desk.press("Esc");
        assertThat(all(desk.press("w"))).contains("the ground foretold, chance of frost");
        desk.press("Esc");
        assertThat(all(desk.press("j"))).contains("trench");
    }
}
