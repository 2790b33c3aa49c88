// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Potting.Depth;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.PotFit;

class PotFitWordsTest {
    private static final PotFit FIT = PotFit.of(15, 3.82, 6, Optional.empty()).orElseThrow();

    @Test
    void moreThanArePackedAreTooMany() {
        PotFit nine = PotFit.of(15, 3.82, 9, Optional.empty()).orElseThrow();

        assertThat(new PotFitWords(nine, LengthUnit.CENTIMETRES).tooMany()).contains("9 bulbs, 8 fit packed");
        assertThat(new PotFitWords(FIT, LengthUnit.CENTIMETRES).tooMany()).isEmpty();
    }

    @Test
    void itSaysHowManyThereAreAndWouldBe() {
        assertThat(new PotFitWords(FIT, LengthUnit.CENTIMETRES).lines(Depth.TIPS_OUT))
                .containsExactly(
                        "6 in 15 cm, to scale",
                        "bulbs 3.8 cm across",
                        "room for 5 airy, 8 packed",
                        "11 touching",
                        "tips out");
        assertThat(new PotFitWords(FIT, LengthUnit.INCHES).lines(Depth.NOT_SAID))
                .contains("6 in 5.9 in, to scale", "depth not said: drawn level");
    }
}
