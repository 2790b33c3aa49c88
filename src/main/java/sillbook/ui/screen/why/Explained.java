// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Look;
import sillbook.words.Explanation;

/** An explanation as a slip: rule, from, sum, and beneath them what would change it. */
final class Explained {
    private static final int LABEL = 4;
    private static final int TEXT = 14;
    private static final int HOW = 32;
    private static final int END = 78;
    private static final int PAGE_ROWS = 2;

    private Explained() {}

    static Look look(Explanation explained, Size body) {
        List<Line> lines = lines(explained);
        int rows = Math.min(lines.size() + 1, body.rows() - PAGE_ROWS);
        return Look.slip("Why " + explained.title(), rows, (area, cells) -> render(lines, area, cells))
                .withAside(Aside.of(String.join(" ", explained.wouldChange())));
    }

    private static void render(List<Line> lines, Rect area, Cells cells) {
        for (int i = 0; i < lines.size(); i++) {
            lines.get(i).render(area.line(i + 1), cells);
        }
    }

    private static List<Line> lines(Explanation explained) {
        List<Line> lines = new ArrayList<>();
        text("Rule", List.of(explained.rule()), lines);
        text("From", explained.from(), lines);
        for (int i = 0; i < explained.sum().size(); i++) {
            Explanation.Line sum = explained.sum().get(i);
            sum(i == 0 ? "Sum" : "", sum, lines);
        }
        lines.add(new Line("", "", "", explained.total(), Style.BOLD));
        return lines;
    }

    /** What does not fit before its figure goes on below. */
    private static void sum(String label, Explanation.Line sum, List<Line> lines) {
        int begin = Math.max(TEXT + Width.of(sum.what()) + 2, HOW);
        List<String> how = Columns.wrap(sum.how(), Math.max(1, END - Width.of(sum.comes()) - 1 - begin));
        lines.add(new Line(label, sum.what(), how.isEmpty() ? "" : how.get(0), sum.comes(), Style.INK));
        how.stream().skip(1).forEach(more -> lines.add(new Line("", "", more, "", Style.INK)));
    }

    private static void text(String label, List<String> sentences, List<Line> lines) {
        boolean isFirst = true;
        for (String sentence : sentences) {
            for (String part : Columns.wrap(sentence, END - TEXT)) {
                lines.add(new Line(isFirst ? label : "", part, "", "", Style.INK));
                isFirst = false;
            }
        }
    }

    /** A line of the explanation. */
    private record Line(String label, String what, String how, String comes, Style style) {
        void render(Rect line, Cells cells) {
            cells.put(line.column() + LABEL, line.row(), label, Style.BOLD);
            int after = cells.put(line.column() + TEXT, line.row(), what, style);
            cells.put(Math.max(after + 2, line.column() + HOW), line.row(), how, style);
            cells.put(line.column() + END - Width.of(comes), line.row(), comes, style);
        }
    }
}
