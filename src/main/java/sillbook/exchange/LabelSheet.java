// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Day;
import sillbook.text.Columns;
import sillbook.words.Days;
import sillbook.words.Stick;

/**
 * Labels for paper: two abreast, each within its cut marks, all of one size.
 *
 * @param sticks one a label
 * @param cautions what stands beneath the labels, whole sentences
 */
public record LabelSheet(List<Stick> sticks, List<String> cautions) {
    private static final int WIDTH = 79;
    private static final int ABREAST = 2;
    private static final int INSIDE = 38;
    private static final int ROWS = 5;
    private static final String NOT_FOOD = "NOT FOOD: bulbs can be poisonous";
    private static final String CUT_ACROSS = ("+" + " -".repeat(INSIDE / 2)).repeat(ABREAST) + "+";
    private static final String CUT_DOWN = ":";

    public LabelSheet {
        sticks = List.copyOf(sticks);
        cautions = List.copyOf(cautions);
    }

    /** The sheet line by line; no line where there is no label. */
    public List<String> lines() {
        if (sticks.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(List.of(CUT_ACROSS));
        for (int at = 0; at < sticks.size(); at += ABREAST) {
            strip(sticks.subList(at, Math.min(sticks.size(), at + ABREAST)), lines);
        }
        lines.add("");
        cautions.forEach(caution -> lines.addAll(Columns.wrap("! " + caution, WIDTH)));
        return lines;
    }

    private static void strip(List<Stick> abreast, List<String> lines) {
        List<List<String>> faces = abreast.stream().map(LabelSheet::face).toList();
        for (int row = 0; row < ROWS; row++) {
            StringBuilder line = new StringBuilder(CUT_DOWN);
            for (List<String> face : faces) {
                line.append(' ')
                        .append(Columns.left(face.get(row), INSIDE - 2))
                        .append(' ')
                        .append(CUT_DOWN);
            }
            lines.add(line.toString());
        }
        lines.add(CUT_ACROSS);
    }

    /** What one label says, row by row. */
    private static List<String> face(Stick stick) {
        return List.of(
                stick.labels() + "  " + stick.name(),
                stick.kind(),
                stick.potted().map(LabelSheet::potted).orElse("potted ____________"),
                String.join(", ", stick.ahead()),
                NOT_FOOD);
    }

    private static String potted(Day day) {
        return "potted " + Days.full(day);
    }
}
