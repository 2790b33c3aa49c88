// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.reckon.packing.Point;

class BedTest {
    private static final double SIX_INCHES = 15.24;

    /** No two nearer than a bulb and the gap, none nearer to the wall than it may be. */
    private static void holds(Bed bed, List<Point> places) {
        for (int i = 0; i < places.size(); i++) {
            assertThat(Math.hypot(places.get(i).x(), places.get(i).y())
                            + bed.bulb() / 2
                            + bed.spacing().wall())
                    .isLessThanOrEqualTo(bed.across() / 2 + 1e-7);
            for (int j = 0; j < i; j++) {
                assertThat(places.get(i).distance(places.get(j)))
                        .isGreaterThanOrEqualTo(bed.bulb() + bed.spacing().gap() - 1e-7);
            }
        }
    }

    /** The ratio is simple arithmetic; the counts follow from it and the published table of packings, those of rings from the sine of half the angle between two bulbs. */
    @ParameterizedTest
    @CsvSource({
        "15, 4, 0, 0, 3.750000, 9, 8",
        "15, 4, .5, .5, 3.222222, 7, 6",
        "15, 4.5, 1, .5, 2.727273, 5, 5",
        "19, 4, 1, 1, 3.600000, 8, 7",
        "12, 5, 0, 0, 2.400000, 3, 3",
        "9, 3, 0, 0, 3, 7, 6",
        "25, 4, 1, 1, 4.800000, 17, 11",
    })
    void countsAndRings(double across, double bulb, double gap, double wall, double ratio, int count, int ring) {
        Bed bed = new Bed(across, bulb, new Spacing(gap, wall));

        assertThat(bed.ratio()).isCloseTo(ratio, within(5e-7));
        assertThat(bed.most().count()).isEqualTo(count);
        assertThat(bed.ring()).isEqualTo(ring);
        holds(bed, bed.most().places());
    }

    /**
     * The counts published for a pot of six inches (Iowa State, Missouri Botanical Garden, Delaware, Nebraska), by grade: from airy to packed the tool takes them in, and at either end at most one more.
     */
    @ParameterizedTest
    @CsvSource({"tulip, 12, 5, 7", "daffodil, 16, 3, 5", "daffodil, 14, 4, 6", "hyacinth, 18, 3, 3", "crocus, 9, 8, 15"
    })
    void fromAiryToPackedInAPotOfSixInches(String kind, double grade, int least, int most) {
        Bed bed = new Bed(SIX_INCHES, Bed.ofGrade(grade), Spacing.AIRY);

        assertThat(bed.most().count()).as(kind).isBetween(least - 1, least);
        assertThat(bed.with(Spacing.PACKED).most().count()).as(kind).isBetween(most, most + 1);
    }

    /** University of Delaware Cooperative Extension: so many in a pot of six inches. What fits is at least that. */
    @ParameterizedTest
    @CsvSource({"12, 6", "18, 3", "9, 15"})
    void nothingPublishedIsMoreThanTheCeiling(double grade, int published) {
        assertThat(new Bed(SIX_INCHES, Bed.ofGrade(grade), Spacing.TOUCHING)
                        .most()
                        .count())
                .isGreaterThanOrEqualTo(published);
    }

    /** A leaflet of the trade: one hyacinth of 18/19 or 19/+ in a pot of 9 cm, one in a pot of 10.5 cm. */
    @Test
    void hyacinthsInSmallPots() {
        assertThat(new Bed(9, Bed.ofGrade(19), Spacing.USUAL).most().count()).isEqualTo(1);
        assertThat(new Bed(10.5, Bed.ofGrade(18), Spacing.USUAL).most().count()).isEqualTo(1);
    }

    /** Five tulips of 12/+ in a pot of 19 cm (common practice) lie in it with more than two pencils between them. */
    @Test
    void fiveTulipsInAPotOfNineteen() {
        Bed bed = new Bed(19, Bed.ofGrade(12), Spacing.AIRY);

        List<Point> five = bed.places(5).orElseThrow();

        holds(bed, five);
        assertThat(bed.apart(5)).isCloseTo(2 * (9.5 - .7 - 6 / Math.PI) / 1.7013016167 - 12 / Math.PI, within(1e-6));
        assertThat(five.get(0).distance(five.get(1))).isCloseTo(bed.apart(5) + bed.bulb(), within(1e-6));
        assertThat(bed.with(Spacing.PACKED).most().count()).isGreaterThan(5);
    }

    @Test
    void gradesAreCircumferences() {
        assertThat(List.of(10, 12, 14, 16, 18).stream().map(grade -> Math.rint(1e3 * Bed.ofGrade(grade)) / 1e3))
                .containsExactly(3.183, 3.820, 4.456, 5.093, 5.730);
    }

    @Test
    void noMoreIsEverLaidThanIsProvenToFitAndNeverWithAnOverlap() {
        IntStream.rangeClosed(15, 210).forEach(tenths -> {
            Bed bed = new Bed(tenths / 10.0, 3, new Spacing(.3, .2));
            Bed.Laid laid = bed.most();
            holds(bed, laid.places());
            assertThat((long) laid.count()).isLessThanOrEqualTo(laid.atMost());
            if (laid.count() > 0) {
                holds(bed, bed.places((laid.count() + 1) / 2).orElseThrow());
            }
            assertThat(bed.places(laid.count() + 1)).isEmpty();
        });
    }

    /** Proven to 14; so a room too small for the next of these has no better answer. */
    @Test
    void whatIsProven() {
        assertThat(new Bed(15, 4, Spacing.TOUCHING).most().isProven()).isTrue();
        assertThat(new Bed(25, 4, new Spacing(1, 1)).most().isProven()).isFalse();
        assertThat(new Bed(4, 5, Spacing.TOUCHING).most().isProven()).isTrue();
        assertThat(new Bed(60, 4, Spacing.TOUCHING).most().isProven()).isFalse();
    }

    /** A triangular lattice about one of its points has 37 within three steps: known from counting. */
    @Test
    void beyondThirtyALatticeIsCut() {
        assertThat(Lattice.within(3, 1)).hasSize(37);
        assertThat(Lattice.within(1, 1)).hasSize(7);
        assertThat(new Bed(7, 1, Spacing.TOUCHING).most().count()).isEqualTo(37);
        assertThat(new Bed(6.25, 1, Spacing.TOUCHING).most().count()).isEqualTo(30);
        assertThat(new Bed(7, 1, Spacing.TOUCHING).places(35).orElseThrow()).hasSize(35);
    }

    @Test
    void oneAndNone() {
        assertThat(new Bed(4, 5, Spacing.TOUCHING).most().places()).isEmpty();
        assertThat(new Bed(4, 5, Spacing.TOUCHING).ring()).isZero();
        assertThat(new Bed(5, 5, Spacing.TOUCHING).most().places()).containsExactly(Point.MIDDLE);
        assertThat(new Bed(5, 5, Spacing.TOUCHING).ring()).isEqualTo(1);
        assertThat(new Bed(8, 5, Spacing.TOUCHING).ring()).isEqualTo(1);
        assertThat(new Bed(10, 5, Spacing.TOUCHING).ring()).isEqualTo(2);
        assertThat(new Bed(10, 5, Spacing.TOUCHING).places(0)).contains(List.of());
        assertThat(new Bed(10, 5, new Spacing(0, 3)).most().count()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, .01})
    void noSuchBulb(double bulb) {
        assertThatThrownBy(() -> new Bed(15, bulb, Spacing.USUAL)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void noSuchPot(double across) {
        assertThatThrownBy(() -> new Bed(across, 4, Spacing.USUAL)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void noSuchGap(double gap) {
        assertThatThrownBy(() -> new Spacing(gap, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spacing(0, gap)).isInstanceOf(IllegalArgumentException.class);
    }
}
