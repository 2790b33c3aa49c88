// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The open weather is what its source says it is. */
class WeatherTest {
    @ParameterizedTest
    @ValueSource(strings = {"seattle-weather.csv", "seattle-weather-hourly-normals.csv"})
    void eachFileIsUnchanged(String file) {
        assertThat(new String(Weather.bytes("sources.md"), StandardCharsets.UTF_8))
                .contains("| `" + file + "` |")
                .contains(Weather.sha256(file));
    }
}
