// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.List;
import sillbook.text.Columns;

/** What a slip says, under a blank line, each sentence beginning a line of its own. */
public record Sentences(List<String> lines) implements Widget {
    /** How far they stand from either side. */
    public static final int INDENT = 4;

    public Sentences {
        lines = List.copyOf(lines);
    }

    /** Broken to the width of a slip. */
    public static Sentences of(List<String> sentences, int columns) {
        return new Sentences(sentences.stream()
                .flatMap(sentence -> Columns.wrap(sentence, columns - 2 * INDENT).stream())
                .toList());
    }

    /** How many lines they take, with the blank one. */
    public int rows() {
        return lines.size() + 1;
    }

    @Override
    public void render(Rect area, Cells cells) {
        Cells drawn = cells.within(area);
        for (int line = 0; line < lines.size(); line++) {
            drawn.put(area.column() + INDENT, area.row() + 1 + line, lines.get(line), Style.INK);
        }
    }
}
