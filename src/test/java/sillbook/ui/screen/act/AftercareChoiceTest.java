// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.change.Decision;
import sillbook.change.Hand;
import sillbook.model.Place.Sort;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;

/** Paperwhites that are past bloom, and judged: what becomes of them? */
class AftercareChoiceTest {
    private final Desk desk = asked();

    private static Desk asked() {
        Desk desk = Desk.over(winter().place("sill", Sort.WARM_SILL)
                .pot("P1", "Linen Parade", "paperwhite")
                .potted("10 nov", "sill")
                .flowered("20 dec")
                .outcome("24 dec", 4)
                .pastBloom("10 jan")
                .journal());
        while (desk.lines().stream().noneMatch(line -> line.startsWith("▸") && line.contains("aftercare"))) {
            desk.press("Down");
        }
        return desk.press("Enter");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            d | P1 finished
            g | P1 given
            p | P1 planted out
            l | P1 leaves cut
            f | P1 fed
            """)
    void oneKeyWritesIt(String key, String step) {
        Effect.CarryOut effect = (Effect.CarryOut) desk.press(key).effects().get(0);
        Decision decision = effect.change()
                .on(
                        desk.state().journal(),
                        new Hand(Instant.EPOCH, Desk.TODAY, desk.state().kit().ids()));
        assertThat(decision.<String>fold(done -> done.name(), refused -> refused.sentence()))
                .startsWith(step);
    }

    @Test
    void itSaysWhatTheKeysAre() {
        assertThat(String.join("\n", desk.lines()))
                .contains("P1 after the bloom: D thrown away, G given away, P planted out, L leaves cut,");
        assertThat(desk.press("x").effects()).isEmpty();
    }
}
