// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.chart.PotLine;
import sillbook.chart.PotStage;
import sillbook.chart.RulerLayout;

/**
 * A pot line drawn under the ruler: its height is the warmth of the stage, ink what has happened, dots what is foretold, the fold between.
 * Its part is a whole line of the page; what stands left of the ruler is left alone.
 */
public record PotLineStroke(RulerLayout ruler, PotLine line) implements Widget {
    @Override
    public void render(Rect area, Cells cells) {
        Rect row = area.line(0);
        Cells drawn = cells.within(row);
        for (int index = 0; index < line.cells().size(); index++) {
            PotLine.Cell cell = line.cells().get(index);
            if (cell.stage() != PotStage.GONE) {
                drawn.put(row.column() + ruler.column(index), row.row(), sign(cell), style(cell));
            }
        }
        ruler.foldColumn().ifPresent(column -> drawn.put(row.column() + column, row.row(), Sign.FOLD, Style.PENCIL));
    }

    private static Sign sign(PotLine.Cell cell) {
        boolean foretold = cell.foretold();
        return switch (cell.stage()) {
            case BEFORE, GONE -> Sign.LEADER;
            case COLD -> foretold ? Sign.COLD_FORETOLD : Sign.COLD;
            case COOL_ROOM -> foretold ? Sign.COOL_ROOM_FORETOLD : Sign.COOL_ROOM;
            case WARM_ROOM -> foretold ? Sign.WARM_ROOM_FORETOLD : Sign.WARM_ROOM;
            case IN_BLOOM -> foretold ? Sign.BLOOM_FORETOLD : Sign.BLOOM;
            case AFTER_BLOOM -> Sign.AFTER_BLOOM;
        };
    }

    private static Style style(PotLine.Cell cell) {
        Style style = Style.of(role(cell.stage()));
        return style.role() == Role.PENCIL || cell.foretold() ? style : style.withBold();
    }

    private static Role role(PotStage stage) {
        return switch (stage) {
            case BEFORE, AFTER_BLOOM, GONE -> Role.PENCIL;
            case COLD -> Role.FROST;
            case COOL_ROOM -> Role.LEAF;
            case WARM_ROOM -> Role.LAMP;
            case IN_BLOOM -> Role.PETAL;
        };
    }
}
