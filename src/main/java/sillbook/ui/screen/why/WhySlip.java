// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.season.Why;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Explanation;
import sillbook.words.WhyWords;

/**
 * Why some figures are what they are, one at a time.
 *
 * @param whys the figures of the line it was asked on
 * @param at the one that is explained
 */
public record WhySlip(List<Why<?>> whys, int at) implements Layer {
    private static final int LABEL = 4;
    private static final int TEXT = 14;
    private static final int HOW = 32;
    private static final int END = 78;
    private static final int PAGE_ROWS = 2;

    public WhySlip {
        whys = List.copyOf(whys);
    }

    /** The offer to explain what is known of a pot. */
    public static Offer offer(State state, Optional<Id<Pot>> pot) {
        List<Why<?>> whys = pot.map(state.almanac().outlook()::whys).orElse(List.of());
        return Offer.of(Action.WHY, () -> Step.to(state.laid(new WhySlip(whys, 0))))
                .offIf(whys.isEmpty(), "there is no figure here");
    }

    @Override
    public Look look(State state, Size body) {
        Explanation explained = new WhyWords(state.journal(), state.kit().handbook()).say(whys.get(at));
        List<Line> lines = lines(explained);
        int rows = Math.min(lines.size() + 1, body.rows() - PAGE_ROWS);
        return Look.slip("Why " + explained.title(), rows, (area, cells) -> render(lines, area, cells))
                .withPlace((at + 1) + " of " + whys.size())
                .withAside(Aside.of(String.join(" ", explained.wouldChange())))
                .withFoot(Action.OTHER_FIGURE, Action.BACK, Action.KEYS);
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
            lines.add(new Line(i == 0 ? "Sum" : "", sum.what(), sum.how(), sum.comes(), Style.INK));
        }
        lines.add(new Line("", "", "", explained.total(), Style.BOLD));
        return lines;
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

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.byKey(Action.OTHER_FIGURE, key -> other(state, key))
                .offIf(whys.size() < 2, "there is only this figure"));
    }

    private Step other(State state, Key key) {
        int by = key.equals(Keys.LEFT) || key.equals(Keys.UP) ? -1 : 1;
        return Step.to(state.withTop(new WhySlip(whys, Math.floorMod(at + by, whys.size()))));
    }
}
