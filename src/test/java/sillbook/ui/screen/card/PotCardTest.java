// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Event;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

class PotCardTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal());

    private Id<Pot> pot(String label) {
        return desk.state().journal().pot(new Season(2026), label).orElseThrow().id();
    }

    private Desk open(String label) {
        return desk.lay(PotCard.of(desk.state(), pot(label)));
    }

    @Test
    void looksAsDrawn() {
        Golden.check("pot-card", open("T4").state());
    }

    @Test
    void aPotInBloomAndAKindWithoutCold() {
        Golden.check("pot-card-in-bloom", open("C1").state());
        Golden.check("pot-card-without-cold", open("A1").state());
    }

    /** An amaryllis of the winter before, fed, outdoors, rested and woken again. */
    private static Winter amaryllis() {
        return winter().of(2025)
                .place("kitchen sill", Sort.WARM_SILL)
                .place("loft", Sort.OTHER)
                .pot("A1", "Umbrella Street", "amaryllis")
                .potted("20 nov", "kitchen sill")
                .flowered("10 jan")
                .outcome("14 jan", 4)
                .pastBloom("10 feb")
                .cared("1 mar", Care.FED)
                .cared("25 may", Care.OUTDOORS)
                .of(2026)
                .then("A1")
                .cared("15 sep", Care.BROUGHT_IN)
                .cared("18 sep", Care.RESTED)
                .cared("20 nov", Care.WOKEN);
    }

    @Test
    void aPlantThatLivesOnTellsItsWintersBefore() {
        Desk lives = Desk.over(amaryllis().journal());
        Golden.check("pots-lives-on", lives.press("2").state());
        lives.press("Enter");
        Golden.check("pot-card-lives-on", lives.state());
        assertThat(String.join("\n", lives.lines()))
                .contains("Before 2025-26: in flower 10 Jan to 10 Feb, outcome 4 of 5")
                .contains("its winter 2");
    }

    @Test
    void whatThermometersSawStandsBesideTheCalendar() {
        Winter told = winter().of(2026)
                .place("cellar", Sort.CELLAR)
                .read("20 sep", "1 nov", 3, 8)
                .read("1 nov", "6 dec", 7, 11)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("4 oct", "cellar");
        Desk read = Desk.over(told.journal());

        Golden.check(
                "pot-card-read",
                read.lay(PotCard.of(read.state(), told.id("T1"))).state());
    }

    @Test
    void aWarmCellarHoldsAPotBackAndAGapIsDotted() {
        Winter told = winter().of(2026)
                .place("cellar", Sort.CELLAR)
                .logged("13 oct", "14 nov", 7, 11.5)
                .logged("28 nov", "11 jan", 9, 11)
                .pot("T3", "Ninepenny Hat", "tulip")
                .potted("13 oct", "cellar");
        Desk held = Desk.over(told.journal());

        Golden.check(
                "pot-card-held-back",
                held.lay(PotCard.of(held.state(), told.id("T3"))).state());
    }

    @Test
    void theBarGoesOnBeyondTheNeed() {
        Winter told = winter().of(2026)
                .place("cellar", Sort.CELLAR)
                .logged("1 sep", "11 jan", 5)
                .pot("T3", "Ninepenny Hat", "tulip")
                .potted("1 sep", "cellar");
        Desk over = Desk.over(told.journal());

        assertThat(over.lay(PotCard.of(over.state(), told.id("T3"))).lines())
                .anyMatch(line -> line.contains("⎻⎻⎻⎢⎻⎻⎻⎻⎻⎻⎻⎻  half a week a cell"));
    }

    @Test
    void whatStandsBelowTheLastEntryIsComeTo() {
        Winter told = winter().of(2026).place("cellar", Sort.CELLAR).pot("H1", "Inkwell", "hyacinth");
        Desk waits = Desk.over(told.journal());
        waits.lay(PotCard.of(waits.state(), told.id("H1")));

        assertThat(waits.lines()).anyMatch(line -> line.startsWith("▸"));
        assertThat(String.join(" ", waits.lines())).doesNotContain("gloves");

        waits.press("End", "End");

        assertThat(String.join(" ", waits.lines())).contains("gloves");
    }

    @Test
    void theNextPotIsAKeyAway() {
        String first = open("C1").line(4);

        assertThat(desk.press("PgDn").line(4)).isNotEqualTo(first);
        assertThat(desk.press("PgUp").line(4)).isEqualTo(first);
    }

    @Test
    void opensAtAnEntry() {
        List<Event> history = desk.state().journal().history(pot("T4"));
        Event first = history.get(0);

        desk.lay(PotCard.at(desk.state(), pot("T4"), first.id())).press("e");

        assertThat(String.join(" ", desk.lines())).contains("Correct an entry of T4: potted");
    }

    @Test
    void howItDidIsPutRightWhereItStands() {
        Winter told = winter().of(2026)
                .place("sill", Sort.WARM_SILL)
                .pot("A1", "Umbrella Street", "amaryllis")
                .potted("5 nov", "sill")
                .flowered("2 jan")
                .outcome("5 jan", 4);
        Desk judged = Desk.over(told.journal());
        judged.lay(PotCard.of(judged.state(), told.id("A1")));
        for (int down = 0; down < 20 && !lines(judged).contains("Correct the outcome"); down++) {
            judged.press("Down", "e");
            if (!lines(judged).contains("Correct the outcome")) {
                judged.press("Esc");
            }
        }

        assertThat(lines(judged)).contains("Correct the outcome of A1").contains("Tue 5 Jan 2027");
    }

    @Test
    void enterDoesTheNextJob() {
        open("T4").press("Enter");

        assertThat(String.join(" ", desk.lines())).contains("Move T4");
    }

    @Test
    void whatIsNotOfThisSeasonSaysItsYear() {
        Winter told = winter().of(2025)
                .place("sill", Sort.WARM_SILL)
                .pot("A1", "Umbrella Street", "amaryllis")
                .potted("5 nov", "sill")
                .flowered("9 jan");
        Desk later = Desk.over(told.of(2026).journal());
        String old = lines(later.lay(PotCard.of(later.state(), told.id("A1"))));

        assertThat(old).contains("9 Jan 2026  ").contains("5 Nov 2025  ");
        assertThat(lines(open("T4"))).doesNotContain("Sep 2026  ");
    }

    private static String lines(Desk desk) {
        return String.join("\n", desk.lines());
    }
}
