// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpiritTest {
    /** Published: one part of spirit of 40 % to seven parts of water, for 4 to 6 % (Cornell University, in the Mercury News, 2012). */
    @Test
    void theWorkedExampleComesOut() {
        assertThat(Spirit.partsOfWater(40)).isEqualTo(7);
        double percent = 40 / (1 + Spirit.partsOfWater(40));
        assertThat(percent)
                .isBetween((double) Spirit.LEAST, (double) Spirit.MOST)
                .isLessThan(Spirit.HARMS);
    }

    @ParameterizedTest
    @CsvSource({"10", "20", "37.5", "43", "95", "100"})
    void theMixtureHasTheUsualStrengthWhateverTheSpirit(double percent) {
        double water = Spirit.partsOfWater(percent);
        assertThat(percent / (1 + water)).isCloseTo(Spirit.USUAL, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, 0, 5, 100.5})
    void whatIsNoSpiritHasNoMixture(double percent) {
        assertThatThrownBy(() -> Spirit.partsOfWater(percent)).hasMessageContaining("no strength of a spirit");
    }

    @Test
    void thePageSaysTheSame() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("docs/how-to/in-water.md"))) {
            List<String> rows = lines.dropWhile(line -> !line.startsWith("<!-- parts of water"))
                    .filter(line -> line.startsWith("| ") && Character.isDigit(line.charAt(2)))
                    .toList();
            assertThat(rows).hasSize(5).allSatisfy(row -> {
                String[] cells = row.split("\\|", -1);
                assertThat(Spirit.partsOfWater(Double.parseDouble(cells[1]))).isEqualTo(Double.parseDouble(cells[2]));
            });
        }
    }

    @Test
    void itsSourceIsListed() {
        assertThat(Spirit.SOURCES)
                .allSatisfy(key -> assertThat(Handbook.standard().source(key)).isPresent());
    }
}
