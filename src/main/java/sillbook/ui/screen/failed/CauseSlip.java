// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.failed;

import java.util.ArrayList;
import java.util.List;
import sillbook.season.Suspect;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.words.SourceWords;
import sillbook.words.SuspectWords;

/** Why a cause stands where it stands: the entries, and what was found with the source of each pair. */
record CauseSlip(Suspect suspect) implements Layer {
    private static final int LABEL = 4;
    private static final int TEXT = 14;
    private static final int END = 78;
    private static final int PAGE_ROWS = 2;

    @Override
    public Look look(State state, Size body) {
        List<Line> lines = lines(state);
        int rows = Math.min(lines.size() + 1, body.rows() - PAGE_ROWS);
        return Look.slip(
                        "Why " + SuspectWords.cause(suspect.cause()), rows, (area, cells) -> render(lines, area, cells))
                .withAside(Aside.of("Entries are counted. How likely a cause is, nobody can tell from them."))
                .withFoot(Action.BACK, Action.KEYS);
    }

    private List<Line> lines(State state) {
        SourceWords sources =
                new SourceWords(state.kit().handbook(), state.journal().settings());
        List<Line> lines = new ArrayList<>();
        text("Under", List.of(SuspectWords.heading(suspect.verdict())), lines);
        text("Journal", new SuspectWords(state.journal()).clues(suspect), lines);
        text("Found", SuspectWords.found(suspect, sources), lines);
        return lines;
    }

    private static void text(String label, List<String> sentences, List<Line> lines) {
        String before = label;
        for (String sentence : sentences) {
            for (String part : Columns.wrap(sentence, END - TEXT)) {
                lines.add(new Line(before, part));
                before = "";
            }
        }
    }

    private static void render(List<Line> lines, Rect area, Cells cells) {
        for (int i = 0; i < lines.size(); i++) {
            Rect line = area.line(i + 1);
            cells.put(line.column() + LABEL, line.row(), lines.get(i).label(), Style.BOLD);
            cells.put(line.column() + TEXT, line.row(), lines.get(i).says(), Style.INK);
        }
    }

    /** A line of the slip; only the first of its sort has a label. */
    private record Line(String label, String says) {}

    @Override
    public List<Offer> offers(State state) {
        return List.of();
    }
}
