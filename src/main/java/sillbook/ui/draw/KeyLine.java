// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Width;

/**
 * The foot's last line: the keys that matter now, the first ones first. Those that do not fit whole are left out, but the
 * last one, which leads to all others, stays as long as it fits at all.
 */
public record KeyLine(List<Hint> hints) implements Widget {
    private static final int APART = 3;

    /**
     * A key and what it does here.
     *
     * @param keys as written on the page: {@code Enter}, {@code Up Down}; bold
     * @param does in a word or two
     */
    public record Hint(String keys, String does) {
        int columns() {
            return Width.of(keys) + 1 + Width.of(does);
        }
    }

    public KeyLine {
        hints = List.copyOf(hints);
    }

    @Override
    public void render(Rect area, Cells cells) {
        Rect line = area.line(0).withoutLeft(1);
        if (line.isEmpty()) {
            return;
        }
        int column = line.column();
        for (Hint hint : fitting(line.columns())) {
            int after = cells.put(column, line.row(), hint.keys(), Style.BOLD);
            column = cells.put(after + 1, line.row(), hint.does(), Style.INK) + APART;
        }
    }

    private List<Hint> fitting(int columns) {
        if (hints.isEmpty()) {
            return List.of();
        }
        Hint last = hints.get(hints.size() - 1);
        List<Hint> fitting = new ArrayList<>();
        int left = columns - last.columns();
        for (Hint hint : hints.subList(0, hints.size() - 1)) {
            left -= hint.columns() + APART;
            if (left < 0) {
                break;
            }
            fitting.add(hint);
        }
        if (last.columns() <= columns) {
            fitting.add(last);
        }
        return fitting;
    }
}
