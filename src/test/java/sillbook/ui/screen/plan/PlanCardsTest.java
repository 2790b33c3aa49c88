// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.change.AdoptPlan;
import sillbook.change.WriteDown;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.SeasonPlan;
import sillbook.model.Wish;
import sillbook.plan.Seeking;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

/** What opens over the page of the plan. */
class PlanCardsTest {
    private static final Size SMALL = new Size(80, 24);

    private final Desk desk = Desk.over(ComingWinter.wished()).press("5", "v");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static List<SeasonPlan> plans(Desk desk) {
        return SeasonPlan.of(ComingWinter.SEASON, desk.state().journal());
    }

    // The card of a pot

    @Test
    void theCardOfAPotLooksAsDrawn() {
        Golden.check("plan-card", desk.press("Down", "Enter").state(), SMALL);
    }

    @Test
    void aPlaceIsChosenOnIt() {
        desk.press("Enter", "Down", "Enter");
        assertThat(desk.line(14)).startsWith("▸ + cellar");
        assertThat(desk.press("Down", "Down", "Enter").line(18)).startsWith("▸ + parlour sill");
        assertThat(desk.press("Esc").line(21)).contains("by hand, 12 pots");
    }

    @Test
    void itsDaysAreMovedOnItAndItIsTurnedOverToTheNext() {
        desk.press("Enter", "+");
        assertThat(desk.line(23)).contains("a 'Pewter Choir' comes in Fri 24 Dec");
        assertThat(desk.press("PgDn").line(4)).startsWith(" b 'Penny Gloaming' x12");
        assertThat(desk.press("PgUp", "PgUp").line(4)).startsWith(" a 'Pewter Choir' x3");
    }

    @Test
    void aPotThatIsGoneHasNoCard() {
        desk.press("Enter");
        Journal bare = ComingWinter.places();
        desk.tell(new Message.Changed(new Snapshot(bare, Desk.TODAY, 0, 0)));
        assertThat(desk.line(4)).startsWith(" It is gone");
        assertThat(desk.press("Esc").line(4)).startsWith(" In bloom");
    }

    @Test
    void noneByHandEither() {
        desk.press("v", "Enter").tell(new Message.Changed(new Snapshot(ComingWinter.places(), Desk.TODAY, 0, 0)));
        assertThat(desk.line(4)).startsWith(" It is gone");
        assertThat(desk.press("Esc").line(7)).contains("Nothing to plan with");
    }

    // Why

    @Test
    void whyLooksAsDrawn() {
        Golden.check("plan-why", desk.press("w").state(), SMALL);
        assertThat(all(desk.press("End"))).contains("a chance is a little too sure of itself");
    }

    // Supplies

    @Test
    void suppliesLookAsDrawn() {
        Golden.check("plan-supplies", desk.press("i").state(), SMALL);
        assertThat(desk.press("Down").line(7)).startsWith("▸   'Blue Postcard'");
    }

    @Test
    void withoutAPotThereAreNoSupplies() {
        Desk bare = Desk.over(ComingWinter.places()).press("5", "i");
        assertThat(bare.line(5)).contains("The plan has no pot that is still to be made.");
        assertThat(bare.line(22)).startsWith(" To buy  nothing.");
    }

    // Plans side by side

    @Test
    void plansSideBySideLookAsDrawn() {
        desk.press("k").kept().press("Down", "Down", "]");
        Golden.check("plan-plans", desk.press("p").state(), SMALL);
        Golden.check("plan-ribbon-side-by-side", desk.press("Esc").state(), new Size(120, 40));
    }

    @Test
    void oneOfThemIsChosenAndNothingIsLost() {
        desk.press("k").kept().press("+", "p");
        assertThat(desk.press("Down", "Enter").line(21)).contains("plan A of 1, 12 pots");
        assertThat(desk.press("p", "Enter").line(21)).contains("by hand, 12 pots");
    }

    @Test
    void theAdoptedOneLeavesItsPotsBehind() {
        desk.press("k").kept().press("t", "Enter").kept().press("p", "Down", "Delete");
        assertThat(all(desk)).contains("12 pots that go by it stay, without its days and places. Enter removes");
        int pots = desk.state().journal().pots().all().size();
        desk.press("Enter").kept();
        assertThat(desk.state().journal().pots().all()).hasSize(pots).hasSizeGreaterThanOrEqualTo(12);
    }

    @Test
    void aKeptOneIsRemoved() {
        desk.press("k").kept().press("p", "Delete", "Enter").kept();
        assertThat(plans(desk)).isEmpty();
        assertThat(desk.press("Esc").line(21)).contains("by hand, 12 pots");
    }

    @Test
    void beforeOneIsKeptThereIsNothingToChoose() {
        assertThat(Desk.over(ComingWinter.places()).press("5", "p", "Enter").line(22))
                .contains("there is no plan yet, K keeps one");
    }

    @Test
    void whatHasNoPriceIsAskedAfter() {
        desk.press("l")
                .type("choose 12 Chalk Lane (daffodil) for 2027-28")
                .press("Enter")
                .kept();
        desk.press("v", "Tab").type("9").press("Enter", "k").kept();
        assertThat(desk.press("p").line(6)).contains("   ?       by hand");
    }

    // Adopting

    @Test
    void adoptingIsAskedForInASlip() {
        assertThat(desk.press("t").line(22)).contains("it is not kept yet, K keeps it");
        desk.press("k").kept();
        Golden.check("plan-adopt", desk.press("t").state(), SMALL);
        assertThat(((Effect.CarryOut) desk.press("Enter").effects().get(0)).change())
                .isInstanceOf(AdoptPlan.class);
        desk.kept();
        assertThat(desk.line(21)).contains("plan A of 1, adopted, 12 pots");
        assertThat(desk.line(23)).contains("U takes it back.");
        assertThat(desk.state().journal().potsOf(ComingWinter.SEASON)).hasSize(12);
        assertThat(desk.press("t").line(22)).contains("the season goes by plan A already");
    }

    @Test
    void anotherAdoptedInItsPlaceSaysWhatGoes() {
        desk.press("k").kept().press("t", "Enter").kept();
        desk.press("b").tell(new Message.Sought(1, new Seeking.Nothing(Seeking.Missing.BULBS)));
        desk.press("+", "k").kept().press("t");
        assertThat(all(desk)).contains("Plan A, adopted on 12 Jan, is laid aside");
        desk.press("Enter").kept();
        assertThat(desk.line(21)).contains("plan B of 2, adopted");
    }

    @Test
    void potsOfAnAdoptedPlanHaveTheirLabels() {
        desk.press("k").kept().press("t", "Enter").kept();
        Pot pot = desk.state().journal().potsOf(ComingWinter.SEASON).get(0);
        assertThat(all(desk)).contains(pot.label() + " '");
        assertThat(desk.press("Delete").line(22)).contains("is there already");
    }

    // Wishing

    @Test
    void aWishIsWrittenInFull() {
        Golden.check("plan-wish", desk.press("n").state(), SMALL);
        desk.press("Tab")
                .type("10 feb 2028")
                .press("Tab", "Tab")
                .type("2")
                .press("Tab")
                .type("scented")
                .press("Tab");
        desk.type("white").press("Tab").type("30 cm").press("Tab").type("full").press("Enter", "Enter");
        Wish wish = (Wish) ((WriteDown) ((Effect.CarryOut) desk.effects().get(0)).change()).entity();
        assertThat(wish.from()).isEqualTo(LocalDate.of(2028, 2, 10));
        assertThat(wish.asks().pots()).isEqualTo(2);
        assertThat(wish.asks().scented()).isTrue();
        assertThat(wish.asks().colour()).isEqualTo("white");
        desk.kept();
        assertThat(all(desk)).contains("10 Feb, 2");
    }

    @Test
    void whatIsWrittenElsewhereIsSeenAtOnce() {
        Journal fewer = desk.state().journal();
        Wish wish = fewer.wishes().all().iterator().next();
        assertThat(desk.line(5)).contains("10 Jan-25 Mar");
        desk.tell(new Message.Changed(new Snapshot(fewer.with(List.of(new Edit.Remove(wish))), Desk.TODAY, 0, 0)));
        assertThat(desk.line(5)).doesNotContain("10 Jan-25 Mar");
    }
}
