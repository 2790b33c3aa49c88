// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.change.RemovePots;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.model.Settings;
import sillbook.season.Winter;
import sillbook.ui.draw.Size;

class UpdateTest {
    private static final RemovePots CHANGE = new RemovePots(List.of());

    /** A page that counts presses of N, and keeps a change at D. */
    private record Counting(int presses, Optional<Cause> settledBy) implements Layer {
        static final Counting FRESH = new Counting(0, Optional.empty());

        @Override
        public Look look(State state, Size body) {
            return Look.body((area, cells) -> {})
                    .withAside(Aside.of("T4", "one", "two"))
                    .withFoot(Action.NEW_POT);
        }

        @Override
        public List<Offer> offers(State state) {
            return List.of(
                    Offer.of(Action.NEW_POT, () -> Step.to(state.withTop(new Counting(presses + 1, settledBy)))),
                    Offer.of(Action.JOT, () -> Step.keep(state, CHANGE, 0)),
                    Offer.of(Action.SAME_AGAIN, () -> Step.to(state)).offIf(true, "there is no pot yet"));
        }

        @Override
        public Layer settled(State before, State after, Cause cause) {
            return new Counting(presses, Optional.of(cause));
        }
    }

    private static Counting page(Desk desk) {
        return (Counting) desk.state().layers().page();
    }

    private static Snapshot snapshot(LocalDate today) {
        return new Snapshot(Journal.empty(Settings.initial(java.time.ZoneOffset.UTC)), today, 1, 0);
    }

    @Test
    void takesLettersLargeAndSmallAlike() {
        assertThat(page(Desk.of(Counting.FRESH).press("n", "N")).presses()).isEqualTo(2);
    }

    @Test
    void saysWhyAKeyIsOff() {
        Desk desk = Desk.of(Counting.FRESH).press("s");
        assertThat(desk.line(22)).isEqualTo(" ! Same again is off just now: there is no pot yet.");
    }

    @Test
    void leavesAKeyThatMeansNothingAlone() {
        Desk desk = Desk.of(Counting.FRESH);
        State before = desk.state();
        assertThat(desk.press("k").state()).isEqualTo(before);
    }

    @Test
    void asksForAChangeOnceUntilItIsAnswered() {
        Desk desk = Desk.of(Counting.FRESH);
        assertThat(desk.press("j").effects()).containsExactly(new Effect.CarryOut(CHANGE));
        assertThat(desk.press("j").effects()).isEmpty();
        desk.tell(new Message.Refused("Not so."));
        assertThat(desk.line(22)).isEqualTo(" ! Not so.");
        assertThat(desk.press("j").effects()).hasSize(1);
    }

    @Test
    void saysWhatWasKeptAndTheWayBackUntilTheNextKeyThatIsNoMovement() {
        Desk desk = Desk.of(Counting.FRESH).press("j");
        desk.tell(new Message.Kept("T4 checked.", false, snapshot(Desk.TODAY)));
        assertThat(desk.line(22)).isEqualTo(" T4  one");
        assertThat(desk.line(23)).isEqualTo(" T4 checked. U takes it back.");
        assertThat(desk.press("Down").line(23)).contains("T4 checked.");
        assertThat(desk.press("n").line(23)).isEqualTo("     two");
        assertThat(page(desk).settledBy()).contains(Layer.Cause.ACT);
    }

    @Test
    void saysWhatToPencilOnTheStickOfWhatWasPotted() {
        Journal potted = Winter.winter()
                .place("cellar", Sort.CELLAR)
                .pots("T1-T6", "Marrow Lane", "tulip")
                .potted("12 jan", "cellar")
                .journal();
        Snapshot now = new Snapshot(potted, Desk.TODAY, 1, 0);
        Desk desk = Desk.of(Counting.FRESH).press("j");
        desk.tell(new Message.Kept("T1-T6 'Marrow Lane' potted.", false, now));

        assertThat(desk.line(22))
                .isEqualTo(" Stick: T1-T6 'Marrow Lane' x5, potted 12 Jan, check from 27 Apr, use by 11 May");
        assertThat(desk.line(23)).isEqualTo(" T1-T6 'Marrow Lane' potted. U takes it back.");
        assertThat(desk.press("n").line(22)).isEqualTo(" T4  one");
    }

    @Test
    void ofSeveralSticksOneIsSaidAndHowManyMore() {
        Journal potted = Winter.winter()
                .place("sill", Sort.WARM_SILL)
                .pot("A1", "Tin", "amaryllis")
                .potted("12 jan", "sill")
                .pot("A2", "Tin", "amaryllis")
                .potted("12 jan", "sill")
                .journal();
        Desk desk = Desk.of(Counting.FRESH).press("j");
        desk.tell(new Message.Kept("A1-A2 potted.", false, new Snapshot(potted, Desk.TODAY, 1, 0)));

        assertThat(desk.line(22)).startsWith(" Stick: A1 'Tin' x").contains("; 1 more: sillbook");
    }

    @Test
    void tellsLayersWhyTheStateChanged() {
        Desk desk = Desk.of(Counting.FRESH).resize(100, 30);
        assertThat(page(desk).settledBy()).contains(Layer.Cause.RESIZE);
        desk.tell(new Message.DayBegan(Desk.TODAY.plusDays(1)));
        assertThat(page(desk).settledBy()).contains(Layer.Cause.ELSEWHERE);
        assertThat(desk.state().shown().today()).isEqualTo(Desk.TODAY.plusDays(1));
        desk.tell(new Message.Kept("T4 is back.", true, snapshot(Desk.TODAY)));
        assertThat(page(desk).settledBy()).contains(Layer.Cause.BACK);
        assertThat(desk.line(29 - 24 + 24)).isEqualTo(" T4 is back.");
    }

    @Test
    void leavesAtOnceWhereNothingCanBeSeen() {
        Desk desk = Desk.of(Counting.FRESH).resize(60, 12);
        assertThat(desk.press("n").effects()).isEmpty();
        assertThat(page(desk).presses()).isZero();
        assertThat(desk.press("q").effects()).containsExactly(new Effect.Quit());
    }

    @Test
    void opensAnotherJournalFromItsFirstPage() {
        Desk desk = Desk.of(Counting.FRESH).press("n").lay(new Quitting());
        desk.tell(new Message.Opened(new Copy("other.sillbook", false, false), snapshot(Desk.TODAY)));
        assertThat(desk.state().layers().over()).isEmpty();
        assertThat(page(desk).presses()).isZero();
    }
}
