// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/**
 * The two lines over the keys: what there is to say of the thing under the cursor.
 *
 * @param label of the thing, bold, before the first line; may be empty
 * @param sentences each begins a line of its own, where two stand
 */
public record Aside(String label, List<String> sentences) implements Widget {
    public static final Aside NONE = of("");

    /** A second line stands under the first's text, but under a long label it is only indented. */
    private static final int MOST_INDENT = 5;

    private static final int LEAST_INDENT = 4;

    public Aside {
        sentences = List.copyOf(sentences);
    }

    /** A running text, broken where the line ends. */
    public static Aside of(String text) {
        return new Aside("", List.of(text));
    }

    public static Aside of(String label, String... sentences) {
        return new Aside(label, List.of(sentences));
    }

    @Override
    public void render(Rect area, Cells cells) {
        Rect text = area.columns(1, area.columns() - 2);
        int first = label.isEmpty() ? 0 : Width.of(label) + 2;
        int indent = first == 0 ? 0 : first + 1 <= MOST_INDENT ? first : LEAST_INDENT - 1;
        cells.put(text.column(), text.row(), Columns.fit(label, text.columns()), Style.BOLD);
        List<String> lines = lines(text.columns() - first, text.columns() - indent);
        for (int i = 0; i < Math.min(lines.size(), text.rows()); i++) {
            int left = i == 0 ? first : indent;
            String line = Columns.fit(lines.get(i), text.columns() - left);
            cells.put(text.column() + left, text.row() + i, line, Style.INK);
        }
    }

    private List<String> lines(int firstColumns, int nextColumns) {
        if (sentences.size() != 1) {
            return sentences;
        }
        List<String> lines = new ArrayList<>();
        List<String> wrapped = Columns.wrap(sentences.get(0), Math.min(firstColumns, nextColumns));
        lines.add(wrapped.get(0));
        lines.addAll(Columns.wrap(String.join(" ", wrapped.subList(1, wrapped.size())), Math.max(1, nextColumns)));
        return lines;
    }
}
