// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** A month's name over the ruler, as three letters from a column on. */
public record MonthName(Month month, int column) {
    private static final int LETTERS = 3;

    public String text() {
        String name = month.name();
        return name.charAt(0) + name.substring(1, LETTERS).toLowerCase(Locale.ROOT);
    }

    /**
     * The names of the months whose first day is shown. Each starts in the cell of its 1st; where the fold would split it, after the fold,
     * or, if it would touch the next name there, before it; where it would touch a name on both sides it is left out.
     */
    public static List<MonthName> of(RulerLayout ruler) {
        List<MonthName> unmoved = unmoved(ruler);
        List<MonthName> placed = new ArrayList<>();
        for (int i = 0; i < unmoved.size(); i++) {
            int free = placed.isEmpty()
                    ? ruler.leftColumns()
                    : placed.get(placed.size() - 1).end() + 1;
            int next = i + 1 < unmoved.size() ? unmoved.get(i + 1).column() : rightEdge(ruler) + 1;
            MonthName name = unmoved.get(i);
            column(name.column(), free, next, ruler.foldColumn())
                    .ifPresent(column -> placed.add(new MonthName(name.month(), column)));
        }
        return List.copyOf(placed);
    }

    private static List<MonthName> unmoved(RulerLayout ruler) {
        List<MonthName> names = new ArrayList<>();
        LocalDate first = ruler.season().fromInclusive().withDayOfMonth(1);
        for (LocalDate day = first; day.isBefore(ruler.season().toExclusive()); day = day.plusMonths(1)) {
            OptionalInt cell = ruler.cell(day);
            if (ruler.season().contains(day) && cell.isPresent()) {
                names.add(new MonthName(day.getMonth(), ruler.column(cell.getAsInt())));
            }
        }
        return names;
    }

    private static OptionalInt column(int unmoved, int free, int next, OptionalInt fold) {
        boolean split = fold.isPresent() && unmoved < fold.getAsInt() && unmoved + LETTERS > fold.getAsInt();
        int column = split ? besideFold(fold.getAsInt(), next) : unmoved;
        return column >= free && column + LETTERS < next ? OptionalInt.of(column) : OptionalInt.empty();
    }

    private static int besideFold(int fold, int next) {
        int after = fold + 1;
        return after + LETTERS < next ? after : fold - LETTERS;
    }

    private int end() {
        return column + LETTERS;
    }

    private static int rightEdge(RulerLayout ruler) {
        return ruler.leftColumns() + ruler.cells() + (ruler.foldColumn().isPresent() ? 1 : 0);
    }
}
