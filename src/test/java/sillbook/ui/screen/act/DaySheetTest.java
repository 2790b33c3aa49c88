// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.model.Place.Sort;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.act.DaySheet.What;
import sillbook.ui.screen.form.Form;

class DaySheetTest {
    @ParameterizedTest
    @EnumSource(What.class)
    void whereAPotIsEmptiedGlovesAreNamed(What what) {
        Winter told = winter().place("sill", Sort.WARM_SILL)
                .pot("A1", "Umbrella Street", "amaryllis")
                .potted("1 nov", "sill");
        Desk desk = Desk.over(told.journal());
        desk.lay(Form.of(DaySheet.of(new Pots(told.ids("A1"), List.of()), what)));

        assertThat(String.join("\n", desk.lines()).contains("Wear gloves")).isEqualTo(what == What.REPOTTED);
    }
}
