// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Volumes of pots: by the formula of a cone cut off, worked out by hand in numpy, and against published ones. */
class FillingTest {
    private static final double INCH = 2.54;

    @Test
    void aPotOfFifteenByElevenByFourteen() {
        Frustum pot = new Frustum(15, 11, 14);

        assertThat(pot.volume()).isCloseTo(1872.9128, within(5e-5));
        assertThat(pot.filledTo(2).volume()).isCloseTo(1532.7766, within(5e-5));
        assertThat(pot.across(12)).isCloseTo(14.428571, within(5e-7));
        assertThat(Filling.of(pot, 2))
                .isEqualTo(new Filling(pot.volume(), pot.filledTo(2).volume()));
    }

    @Test
    void aCylinderAndACone() {
        assertThat(new Frustum(10, 10, 10).volume()).isCloseTo(785.3982, within(5e-5));
        assertThat(new Frustum(12, 0, 9).volume()).isCloseTo(339.2920, within(5e-5));
    }

    /** Sizes of clay pots in a gardener's column (Alabama), a base of 0.70 of the rim; litres worked out by hand, to 0.05 L. */
    @ParameterizedTest
    @CsvSource({"6.25, 5.5, 2.0", "6.25, 4.25, 1.55", "6.62, 4.25, 1.75", "6.62, 3.25, 1.35"})
    void aClayPotOfSixInches(double rim, double height, double litres) {
        Frustum pot = new Frustum(rim * INCH, PotShape.BASE * rim * INCH, height * INCH);

        assertThat(pot.volume() / 1000).isCloseTo(litres, within(.05));
    }

    @Test
    void shapesByTheirRim() {
        assertThat(PotShape.STANDARD.of(10)).isEqualTo(new Frustum(10, 7, 10));
        assertThat(PotShape.AZALEA.of(10)).isEqualTo(new Frustum(10, 7, 7.5));
        assertThat(PotShape.PAN.of(6.62).height()).isCloseTo(4.25, within(1e-9));
    }

    /**
     * Volumes in growers' tables, by the nominal size in inches: 4 in a pint, 6 in 1.2 L, 8 in 3 quarts, 10 in 5 quarts. One nominal size differs up to twofold from table to table, and is told of the rim outside: so an azalea pot of that width comes to no less, and to
     * no more than twice as much; but the smallest, whose table rounds to pints, to within a twentieth.
     */
    @ParameterizedTest
    @CsvSource({"4, .473, .95", "6, 1.2, 1", "8, 2.8, 1", "10, 4.8, 1"})
    void nominalSizesByPublishedTables(double inches, double litres, double least) {
        double worked = PotShape.AZALEA.of(inches * INCH).volume() / 1000;

        assertThat(worked / litres).isBetween(least, 2.0);
    }

    @Test
    void potsWhoseVolumeWasMeasured() {
        assertThat(Filling.measured(1500, 10, 1.3).filled()).isCloseTo(1500 - 102.1018, within(5e-5));
        assertThat(Filling.measured(50, 10, 1.3).filled()).isZero();
        assertThat(Filling.of(new Frustum(5, 5, 1), 1.3).filled()).isZero();
    }

    @Test
    void bulbsTakeRoomFromTheMix() {
        Filling filling = Filling.of(new Frustum(15, 11, 14), 2);

        assertThat(Filling.ball(2)).isCloseTo(4.18879, within(5e-6));
        assertThat(filling.mix(0)).isEqualTo(filling.filled());
        assertThat(filling.mix(7 * Filling.ball(4))).isCloseTo(1532.7766 - 7 * 33.5103, within(5e-4));
        assertThat(filling.mix(7 * Filling.ball(40))).isZero();
    }

    /** Three parts loam, two peat, one sand (University of Delaware Cooperative Extension). */
    @Test
    void partsOfAMixWithWhatItSettles() {
        assertThat(Parts.loose(1)).isEqualTo(1.2);
        assertThat(new Parts(List.of(3.0, 2.0, 1.0)).of(2))
                .satisfiesExactly(
                        loam -> assertThat(loam).isCloseTo(1.2, within(1e-9)),
                        peat -> assertThat(peat).isCloseTo(.8, within(1e-9)),
                        sand -> assertThat(sand).isCloseTo(.4, within(1e-9)));
    }

    /** A ball that touches a leaning wall touches it higher up than its middle: at 45 degrees its middle keeps the radius times the root of two from the wall. */
    @Test
    void aLeaningWallKeepsABallFarther() {
        Frustum steep = new Frustum(20, 0, 10);

        assertThat(steep.room(2, 5)).isCloseTo(10 - 2 * (Math.sqrt(2) - 1), within(1e-9));
        assertThat(new Frustum(10, 10, 10).room(2, 5)).isEqualTo(10);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Frustum(0, 5, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Frustum(5, -1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Frustum(5, 5, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Frustum(5, Double.POSITIVE_INFINITY, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Parts(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Parts(List.of(0.0))).isInstanceOf(IllegalArgumentException.class);
    }
}
