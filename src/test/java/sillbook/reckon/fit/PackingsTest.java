// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.reckon.packing.Point;

/** The packings that are shipped, against the published ratios (Graham and others 1998); where those come from stands beside the table. */
class PackingsTest {
    private static final double VALID = 1e-9;

    @ParameterizedTest
    @CsvFileSource(resources = "ratios.csv", numLinesToSkip = 1)
    void everyPackingIsValidAndNotWorseThanThePublishedOne(int count, double ratio, String proven) {
        Packing packing = Packings.of(count);
        List<Point> centres = packing.centres();
        double radius = 1 / packing.ratio();

        assertThat(centres).hasSize(count);
        assertThat(centres)
                .allSatisfy(centre ->
                        assertThat(Math.hypot(centre.x(), centre.y()) + radius).isLessThanOrEqualTo(1 + VALID));
        IntStream.range(0, count)
                .forEach(i -> IntStream.range(0, i)
                        .forEach(j -> assertThat(Math.hypot(
                                        centres.get(i).x() - centres.get(j).x(),
                                        centres.get(i).y() - centres.get(j).y()))
                                .isGreaterThanOrEqualTo(2 * radius - VALID)));
        assertThat(packing.ratio()).isCloseTo(ratio, within(1e-6));
        assertThat(Packings.isProven(count)).isEqualTo(proven.equals("yes"));
    }

    @ParameterizedTest
    @CsvSource({
        "3, 2.1547005383792515",
        "4, 2.414213562373095",
        "5, 2.7013016167040798",
        "7, 3",
        "8, 3.304764870962486",
        "9, 3.613125929752753",
        "11, 3.9238044001630872",
        "13, 4.23606797749979",
        "19, 4.863703305156273",
    })
    void closedFormsAreMet(int count, double ratio) {
        assertThat(Packings.of(count).ratio()).isCloseTo(ratio, within(1e-9));
    }

    @Test
    void sixAndEighteenAreNeverTheMost() {
        assertThat(IntStream.rangeClosed(100, 700).map(hundredths -> Packings.most(hundredths / 100.0)))
                .doesNotContain(6, 18)
                .contains(5, 7, 17, 19, 30)
                .isSorted();
        assertThat(Packings.most(3)).isEqualTo(7);
        assertThat(Packings.most(3 - 1e-6)).isEqualTo(5);
        assertThat(Packings.most(.99)).isZero();
        assertThat(Packings.most(Double.NaN)).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 19, 20, 21, 26, 30})
    void theSearchFindsThemAgain(int count) {
        double ratio = Packings.of(count).ratio();

        assertThat(PackingSearch.searched(count, 400, (1 - 1e-9) / ratio).ratio())
                .isCloseTo(ratio, within(1e-8));
    }
}
