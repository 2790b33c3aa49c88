// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.chart.Days;
import sillbook.chart.PotLine;
import sillbook.chart.PotStage;
import sillbook.chart.RulerLayout;
import sillbook.chart.Sill;
import sillbook.chart.StageSpan;

class RulerWidgetsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final List<Days> BLOOMS =
            List.of(Days.of(LocalDate.of(2026, 12, 15), 20), Days.of(LocalDate.of(2027, 1, 5), 70));

    private static RulerHead head(int startYear, int columns) {
        LocalDate start = LocalDate.of(startYear, 7, 1);
        RulerLayout ruler = RulerLayout.of(new Days(start, start.plusYears(1)), TODAY, columns);
        String season = "season " + startYear + "-" + (startYear + 1) % 100;
        return new RulerHead("Tue 12 Jan 2027", season, ruler, Sill.of(ruler, BLOOMS));
    }

    @Test
    void theHeadOfTodaysSeason() {
        Cells cells = Drawing.of(head(2026, 80), 80, 2);

        assertThat(cells.text())
                .isEqualTo(" Tue 12 Jan 2027          Jul Aug  Sep Oct Nov  Dec Jan▾  Feb Mar Apr May  Jun  \n"
                        + " season 2026-27 ⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽✿✿✿✿✿╎❀❀❀❀❀❀❀❀❀⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽");
        assertThat(cells.styles())
                .isEqualTo("..........................ddd.ddd..ddd.ddd.ddd..ddd.dddB..ddd.ddd.ddd.ddd..ddd..\n"
                        + "................ddddddddddddddddddddddddddddddddddPPPPPdpppppppppddddddddddddddd");
    }

    @Test
    void theHeadOfAnotherSeasonSaysWhereTodayLies() {
        assertThat(Drawing.of(head(2027, 80), 80, 2).text().lines())
                .first()
                .isEqualTo(" Tue 12 Jan 2027        ◂ Jul Aug  Sep Oct  Nov Dec Jan  Feb Mar Apr  May Jun   ");
    }

    @Test
    void theHeadOfAWidePageAndInAscii() {
        assertThat(Drawing.of(head(2026, 120), 120, 1, Alphabet.ASCII).text())
                .isEqualTo(
                        " Tue 12 Jan 2027               Sep     Oct      Nov      Dec      Jan |     Feb     Mar     "
                                + "Apr      May      Jun       ");
    }

    @Test
    void withoutASeasonTheSillRunsAcross() {
        RulerHead none = new RulerHead("", "", head(2026, 80).ruler(), new Sill(List.of()));

        assertThat(Drawing.of(none, 80, 2, Alphabet.ASCII).text().lines())
                .last()
                .isEqualTo("_".repeat(55) + "|" + "_".repeat(24));
    }

    @Test
    void aPotLineIsInkBeforeTheFoldAndDotsAfter() {
        RulerLayout ruler = head(2026, 80).ruler();
        PotLine line = PotLine.of(
                ruler,
                List.of(
                        new StageSpan(PotStage.COLD, new Days(LocalDate.of(2026, 9, 21), TODAY)),
                        new StageSpan(PotStage.COOL_ROOM, Days.of(TODAY, 7)),
                        new StageSpan(PotStage.WARM_ROOM, Days.of(TODAY.plusDays(7), 12)),
                        new StageSpan(PotStage.IN_BLOOM, Days.of(TODAY.plusDays(19), 10)),
                        new StageSpan(PotStage.AFTER_BLOOM, Days.of(TODAY.plusDays(29), 28))),
                Optional.of(PotStage.COLD));
        Cells cells = Drawing.of(new PotLineStroke(ruler, line), 80, 1);

        assertThat(cells.text())
                .isEqualTo("                          ⋅⋅⋅⋅⋅⋅⋅⋅⋅⋅⋅⋅⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽⎽╎⠤⠒❀~~~~                 ");
        assertThat(cells.styles())
                .isEqualTo("..........................ddddddddddddFFFFFFFFFFFFFFFFFdlwpdddd.................");
    }

    @Test
    void drawsAtAnySize() {
        for (int columns = 0; columns < 60; columns++) {
            RulerHead head = head(2026, columns);
            PotLine line = PotLine.of(head.ruler(), List.of(), Optional.empty());
            for (int rows = 0; rows < 3; rows++) {
                Drawing.of(head, columns, rows);
                Drawing.of(new PotLineStroke(head.ruler(), line), columns, rows);
            }
        }
        assertThat(Drawing.of(head(2026, 10), 10, 2).text()).startsWith(" ");
    }
}
