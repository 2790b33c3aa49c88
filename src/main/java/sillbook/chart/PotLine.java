// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A pot's life under the ruler, a cell each.
 *
 * <p>A cell shows the stage that holds most of its days, on a tie the later one; today's cell shows today's stage. A stage that would
 * vanish takes the cell where it has most days, if the stage it takes it from keeps another.
 */
public record PotLine(List<Cell> cells) {
    /** One cell: what stands there, and whether that is still to come. */
    public record Cell(PotStage stage, boolean foretold) {}

    public PotLine {
        cells = List.copyOf(cells);
    }

    /**
     * The line of one pot.
     *
     * @param spans in order of time; before the first the leader runs, after the last nothing does; a gap counts to the stage before it
     * @param stageToday what the pot stands in today, where that is known better than by the spans
     */
    public static PotLine of(RulerLayout ruler, List<StageSpan> spans, Optional<PotStage> stageToday) {
        List<StageSpan> lived =
                spans.stream().filter(span -> !span.days().isEmpty()).toList();
        Draft draft = new Draft(ruler, lived);
        draft.setToday(stageToday);
        draft.rescueVanished();
        return new PotLine(
                IntStream.range(0, ruler.cells()).mapToObj(draft::cell).toList());
    }

    /**
     * The line while it is worked out. Stages are numbered by their place in the pot's life: 0 before, 1 the first span, and so on; the
     * last number is gone.
     */
    private static final class Draft {
        private final RulerLayout ruler;
        private final List<StageSpan> spans;
        private final int gone;
        /** The first days, since the epoch, of number 1 and on. */
        private final long[] firstDays;

        private final int[][] daysOf;
        private final int[] shown;

        Draft(RulerLayout ruler, List<StageSpan> spans) {
            this.ruler = ruler;
            this.spans = spans;
            gone = spans.size() + 1;
            firstDays = firstDays(spans);
            daysOf = new int[ruler.cells()][];
            shown = new int[ruler.cells()];
            for (int cell = 0; cell < shown.length; cell++) {
                daysOf[cell] = daysOf(ruler.days(cell));
                shown[cell] = mostDays(daysOf[cell]);
            }
        }

        /** Without any span the pot is gone from the beginning. */
        private static long[] firstDays(List<StageSpan> spans) {
            long[] days = new long[spans.size() + 1];
            days[spans.size()] = Long.MIN_VALUE;
            for (int i = 0; i < spans.size(); i++) {
                days[i] = spans.get(i).days().fromInclusive().toEpochDay();
                days[i + 1] = spans.get(i).days().toExclusive().toEpochDay();
            }
            return days;
        }

        Cell cell(int index) {
            return new Cell(stage(shown[index]), ruler.isForetold(index));
        }

        void setToday(Optional<PotStage> stageToday) {
            OptionalInt cell = ruler.todayCell();
            if (cell.isPresent()) {
                int byDate = numberOn(ruler.today());
                shown[cell.getAsInt()] =
                        stageToday.map(stage -> nearest(stage, byDate)).orElse(byDate);
            }
        }

        void rescueVanished() {
            for (int number = 1; number < gone; number++) {
                int best = count(number) > 0 ? -1 : bestCell(number);
                if (best >= 0) {
                    shown[best] = number;
                }
            }
        }

        private int[] daysOf(Days days) {
            long from = days.fromInclusive().toEpochDay();
            long to = days.toExclusive().toEpochDay();
            int[] counts = new int[gone + 1];
            for (int number = 0; number <= gone; number++) {
                long first = number == 0 ? from : Math.max(from, firstDays[number - 1]);
                long after = number == gone ? to : Math.min(to, firstDays[number]);
                counts[number] = (int) Math.max(0, after - first);
            }
            return counts;
        }

        private int numberOn(LocalDate day) {
            int number = 0;
            while (number < gone && firstDays[number] <= day.toEpochDay()) {
                number++;
            }
            return number;
        }

        /** On a tie the later stage, as the counts are walked in their order. */
        private static int mostDays(int[] counts) {
            int best = 0;
            for (int number = 1; number < counts.length; number++) {
                best = counts[number] >= counts[best] && counts[number] > 0 ? number : best;
            }
            return best;
        }

        /** The number of a stage that lies nearest to where the dates put the pot; that of the dates where there is no such stage. */
        private int nearest(PotStage stage, int byDate) {
            return IntStream.rangeClosed(0, gone)
                    .filter(number -> stage(number) == stage)
                    .boxed()
                    .min((a, b) -> Integer.compare(Math.abs(a - byDate), Math.abs(b - byDate)))
                    .orElse(byDate);
        }

        private int bestCell(int number) {
            int best = -1;
            for (int cell = 0; cell < shown.length; cell++) {
                int days = isFree(cell) ? daysOf[cell][number] : 0;
                boolean better = days > 0 && (best < 0 || days >= daysOf[best][number]);
                best = better ? cell : best;
            }
            return best;
        }

        private boolean isFree(int cell) {
            return ruler.todayCell().orElse(-1) != cell && count(shown[cell]) > 1;
        }

        private long count(int number) {
            return IntStream.of(shown).filter(other -> other == number).count();
        }

        private PotStage stage(int number) {
            if (number == 0) {
                return PotStage.BEFORE;
            }
            return number == gone ? PotStage.GONE : spans.get(number - 1).stage();
        }
    }
}
