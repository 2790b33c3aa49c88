// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What came, counted against what was ordered. */
class ArrivalTest {
    private static Purchase of(int count, Arrival arrival) {
        return new Purchase(
                new Id<>(0, 1),
                new Id<>(0, 2),
                new Season(2026),
                Day.on(LocalDate.of(2026, 8, 20)),
                count,
                Purchase.Grade.UNKNOWN,
                Optional.of(new Purchase.Money(720, "")),
                "",
                "",
                arrival,
                Optional.of(new Id<>(0, 4)),
                Purchase.Cooled.UNKNOWN,
                Purchase.State.IN_HAND,
                "");
    }

    private static Arrival counted(int ordered, Optional<Integer> firm, int soft, int mouldy) {
        return new Arrival(
                Optional.of(ordered), Optional.of(new Id<>(0, 3)), firm, Optional.of(soft), Optional.of(mouldy), "");
    }

    @Test
    void softAndMouldyBulbsAreNotPlanted() {
        Purchase purchase = of(27, counted(30, Optional.empty(), 2, 1));
        assertThat(purchase.sound()).isEqualTo(24);
        assertThat(purchase.missing()).isEqualTo(3);
    }

    @Test
    void firmOnesWereCountedThemselves() {
        assertThat(of(27, counted(30, Optional.of(20), 2, 1)).sound()).isEqualTo(20);
    }

    @Test
    void whatNobodyCountedIsSound() {
        assertThat(of(27, Arrival.in("fine")).sound()).isEqualTo(27);
        assertThat(of(27, Arrival.NOT_SAID).missing()).isZero();
    }

    @Test
    void moreThanOrderedIsNotShort() {
        assertThat(of(33, counted(30, Optional.empty(), 0, 0)).missing()).isZero();
    }

    @Test
    void thePriceIsThatOfAllThatWereOrdered() {
        assertThat(of(24, counted(60, Optional.empty(), 3, 0)).costOf(39)).contains(new Purchase.Money(468, ""));
        assertThat(of(33, counted(30, Optional.empty(), 0, 0)).costOf(1)).contains(new Purchase.Money(24, ""));
        assertThat(of(48, Arrival.NOT_SAID).costOf(2)).contains(new Purchase.Money(30, ""));
        assertThat(of(64, Arrival.NOT_SAID).costOf(2)).as("22.5 rounded").contains(new Purchase.Money(23, ""));
    }

    @Test
    void noMoreAreLookedAtThanCame() {
        assertThatThrownBy(() -> of(5, counted(5, Optional.of(3), 2, 1)))
                .hasMessageContaining("6 bulbs were looked at");
    }

    @Test
    void lessThanNoneCannotBeCounted() {
        assertThatThrownBy(() -> counted(0, Optional.empty(), 0, 0)).hasMessageContaining("no such number");
        assertThatThrownBy(() -> counted(1, Optional.of(-1), 0, 0)).hasMessageContaining("no such number");
        assertThatThrownBy(() -> counted(1, Optional.empty(), -1, 0)).hasMessageContaining("no such number");
        assertThatThrownBy(() -> counted(1, Optional.empty(), 0, -1)).hasMessageContaining("no such number");
    }

    @Test
    void itNamesWhatWasOrderedWhereAnotherWasSent() {
        assertThat(of(27, counted(30, Optional.empty(), 0, 0)).refersTo())
                .containsExactly(new Id<>(0, 2), new Id<>(0, 3), new Id<>(0, 4));
    }
}
