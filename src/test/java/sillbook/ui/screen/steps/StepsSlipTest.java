// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.steps;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Snapshot;

class StepsSlipTest {
    private static Desk desk(int toTakeBack, int toPutBack) {
        return Desk.over(new Snapshot(GrowersWinter.told().journal(), Desk.TODAY, toTakeBack, toPutBack));
    }

    @ParameterizedTest
    @CsvSource({"u, BACK", "r, FORWARD"})
    void whoTypesAheadOfTheNamesOfTheStepsMeansTheLastOne(String key, Way way) {
        Desk desk = desk(3, 3).press(key);
        assertThat(String.join("\n", desk.lines())).contains(way.title());
        assertThat(desk.press("Enter").effects()).containsExactly(way.go(1));
    }

    @Test
    void whereNothingIsDoneNothingCanBeTakenBack() {
        assertThat(desk(0, 0).press("u").line(22)).contains("nothing is done yet");
        assertThat(desk(0, 0).press("r").line(22)).contains("nothing was taken back");
    }
}
