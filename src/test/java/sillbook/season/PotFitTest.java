// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Arrival;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.reckon.fit.PotShape;

class PotFitTest {
    private static final Variety TULIP = Variety.of(new Id<>(1, 1), "Marrow Lane", Kind.of("tulip"));
    private static final Season SEASON = new Season(2026);

    private static Purchase bought(Purchase.Grade grade) {
        return new Purchase(
                new Id<>(2, 1),
                TULIP.id(),
                SEASON,
                Day.on(LocalDate.of(2026, 9, 2)),
                20,
                grade,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                Purchase.State.IN_HAND,
                "");
    }

    private static Container pan(Optional<Length> across, Optional<Length> height) {
        return new Container(new Id<>(3, 1), "pan", Container.Shape.PAN, across, height, 6, 0, "");
    }

    private static Optional<PotFit> fit(Purchase.Grade grade, Container container, int bulbs) {
        Purchase purchase = bought(grade);
        Pot pot = Pot.waiting(
                new Id<>(4, 1),
                SEASON,
                "T1",
                List.of(new Pot.Planting(TULIP.id(), bulbs, Optional.of(purchase.id()))),
                Optional.of(container.id()));
        Journal journal = Journal.of(List.of(Settings.initial(ZoneOffset.UTC), TULIP, purchase, container, pot));
        return PotFit.of(journal, pot);
    }

    private static Purchase.Grade printed(String grade) {
        return new Purchase.Grade(grade, Optional.empty());
    }

    @Test
    void aGradeIsACircumference() {
        PotFit fit = fit(printed("12+"), pan(Optional.of(Length.ofCentimetres(15)), Optional.empty()), 5)
                .orElseThrow();
        assertThat(fit.bed().bulb()).isCloseTo(12 / Math.PI, within(1e-9));
        assertThat(fit.count()).isEqualTo(5);
        assertThat(fit.places()).hasSize(5);
        assertThat(fit.airy()).isLessThanOrEqualTo(fit.packed());
        assertThat(fit.touching()).isGreaterThan(fit.packed());
        assertThat(fit.shape()).isEqualTo(PotShape.PAN.of(15));
    }

    @Test
    void ofAGradeFromToTheMiddleIsTaken() {
        assertThat(PotFit.bulb(bought(printed("14/16")))).contains(15 / Math.PI);
    }

    @Test
    void whatWasMeasuredGoesBeforeTheGrade() {
        Purchase.Grade measured = new Purchase.Grade("12+", Optional.of(Length.ofCentimetres(4)));
        PotFit fit = fit(measured, pan(Optional.of(Length.ofCentimetres(15)), Optional.of(Length.ofCentimetres(9))), 5)
                .orElseThrow();
        assertThat(fit.bed().bulb()).isEqualTo(4);
        assertThat(fit.shape().height()).isEqualTo(9);
    }

    @Test
    void withoutAWidthOrASizeNothingIsKnown() {
        assertThat(fit(printed("12+"), pan(Optional.empty(), Optional.empty()), 5))
                .isEmpty();
        assertThat(fit(printed("DN I"), pan(Optional.of(Length.ofCentimetres(15)), Optional.empty()), 5))
                .isEmpty();
        assertThat(fit(printed("60/62"), pan(Optional.of(Length.ofCentimetres(15)), Optional.empty()), 1))
                .as("wider than the pot")
                .isEmpty();
        assertThat(PotFit.of(500, 1, 3, Optional.empty())).as("lost in it").isEmpty();
        assertThat(PotFit.of(15, 0, 3, Optional.empty())).isEmpty();
    }

    @Test
    void tooManyHaveNoPlaces() {
        assertThat(fit(printed("12+"), pan(Optional.of(Length.ofCentimetres(15)), Optional.empty()), 25)
                        .orElseThrow()
                        .places())
                .isEmpty();
        assertThat(PotFit.of(15, 3.82, 10, Optional.empty()).orElseThrow().places())
                .as("closer than they should, but not touching")
                .hasSize(10);
    }

    @Test
    void everyShapeIsNearOneOfTheTrade() {
        assertThat(Container.Shape.values())
                .extracting(PotFit::shape)
                .as("standard, azalea, pan, bowl, glass, outer, other")
                .containsExactly(
                        PotShape.STANDARD,
                        PotShape.AZALEA,
                        PotShape.PAN,
                        PotShape.PAN,
                        PotShape.STANDARD,
                        PotShape.STANDARD,
                        PotShape.STANDARD);
    }
}
