// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.chart.Curve;
import sillbook.chart.Days;
import sillbook.chart.LevelScale;
import sillbook.chart.TimeAxis;
import sillbook.chart.Warmth;
import sillbook.ui.draw.WarmthChart.Edges;

class WarmthChartTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Curve NOTHING = new Curve(List.of());
    private static final double GAP = Double.NaN;
    private static final int LEFT = 5;
    /** Ticks 4, 2 and 0; levels half a degree apart. */
    private static final LevelScale SCALE = new LevelScale(0, 2, 3);

    /** Five days, the fold after the third. */
    private static final TimeAxis AXIS = TimeAxis.of(Days.of(TODAY.minusDays(2), 5), 1, TODAY, LEFT, ZoneOffset.UTC);

    /** Of these means; NaN where nothing is known. */
    private static Curve curve(double... means) {
        return new Curve(Arrays.stream(means)
                .mapToObj(mean -> Double.isNaN(mean) ? Optional.<Warmth>empty() : Optional.of(Warmth.steady(mean)))
                .toList());
    }

    private static Cells draw(WarmthChart chart, Alphabet alphabet) {
        Cells cells = Cells.blank(new Size(LEFT + 6, chart.scale().rows()), alphabet);
        chart.render(cells.area(), cells);
        return cells;
    }

    private static List<String> lines(WarmthChart chart) {
        return draw(chart, Alphabet.UNICODE)
                .text()
                .lines()
                .map(String::stripTrailing)
                .toList();
    }

    @Test
    void theHigherTheWarmer() {
        assertThat(lines(new WarmthChart(AXIS, SCALE, Optional.empty(), curve(0.0, 1.0, 1.5), NOTHING, NOTHING)))
                .containsExactly("  4     ╎", "  2   ⎼⎻╎", "  0  ⎺  ╎");
    }

    @Test
    void aGapIsLeftBlankAndWhatIsForetoldIsDotted() {
        WarmthChart chart = new WarmthChart(
                AXIS, SCALE, Optional.empty(), curve(1.0, GAP, 1.0), NOTHING, curve(2.0, GAP, 2.0, 2.0, 0.0));

        assertThat(lines(chart)).containsExactly("  4     ╎", "  2  ⎼ ⎼╎⠉", "  0     ╎ ⠉");
    }

    @Test
    void theBandIsDottedAndHasABracketAsTallAsItIs() {
        WarmthChart chart =
                new WarmthChart(AXIS, SCALE, Optional.of(new Edges(0, 3)), curve(4.0, 3.0, -0.5), NOTHING, NOTHING);
        Cells cells = draw(chart, Alphabet.UNICODE);

        assertThat(cells.text().lines().map(String::stripTrailing))
                .containsExactly("  4 ⎡⎺⎼⠤╎⠤⠤", "  2 ⎢   ╎", "  0 ⎣⠉⠉⎻╎⠉⠉");
        assertThat(cells.style(LEFT, 0)).isEqualTo(Style.of(Role.LAMP).withBold());
        assertThat(cells.style(LEFT + 1, 0)).isEqualTo(Style.BOLD);
        assertThat(cells.style(LEFT + 2, 2)).isEqualTo(Style.of(Role.FROST).withBold());
        assertThat(cells.style(LEFT, 2)).isEqualTo(Style.PENCIL);
    }

    @Test
    void aBandBeyondTheScaleReachesToItsEnds() {
        WarmthChart wide = new WarmthChart(AXIS, SCALE, Optional.of(new Edges(-9, 9)), NOTHING, NOTHING, NOTHING);
        WarmthChart beyond = new WarmthChart(AXIS, SCALE, Optional.of(new Edges(9, 12)), NOTHING, NOTHING, NOTHING);
        WarmthChart thin = new WarmthChart(AXIS, SCALE, Optional.of(new Edges(1, 1.5)), NOTHING, NOTHING, NOTHING);

        assertThat(lines(wide)).containsExactly("  4 ⎢   ╎", "  2 ⎢   ╎", "  0 ⎢   ╎");
        assertThat(lines(beyond)).containsExactly("  4     ╎", "  2     ╎", "  0     ╎");
        assertThat(lines(thin)).containsExactly("  4     ╎", "  2 ⎢⠒⠒⠒╎⠒⠒", "  0     ╎");
    }

    @Test
    void lowestAndHighestAreThinBesideAMeanAndInkAlone() {
        Curve extremes = new Curve(
                List.of(Optional.of(new Warmth(2, 0, 4)), Optional.of(new Warmth(2, 0, 4)), Optional.empty()));
        WarmthChart chart = new WarmthChart(AXIS, SCALE, Optional.empty(), curve(2.0), extremes, NOTHING);
        Cells cells = draw(chart, Alphabet.UNICODE);

        assertThat(cells.text().lines().map(String::stripTrailing))
                .containsExactly("  4  ⎺⎺ ╎", "  2  ⎺  ╎", "  0  ⎺⎺ ╎");
        assertThat(cells.style(LEFT, 0)).isEqualTo(Style.PENCIL);
        assertThat(cells.style(LEFT, 1)).isEqualTo(Style.BOLD);
        assertThat(cells.style(LEFT + 1, 0)).isEqualTo(Style.BOLD);
    }

    @Test
    void inAsciiEveryLineHasALetterOfItsOwn() {
        Curve extremes = new Curve(List.of(Optional.of(new Warmth(2, 0, 4))));
        WarmthChart chart = new WarmthChart(
                AXIS, SCALE, Optional.of(new Edges(1, 3)), curve(2.0), extremes, curve(GAP, GAP, GAP, 2.0));

        assertThat(draw(chart, Alphabet.ASCII).text().lines().map(String::stripTrailing))
                .containsExactly("  4 +:--|--", "  2 +o--|.-", "  0  :  |");
    }

    @Test
    void fineTicksHaveATenth() {
        WarmthChart chart =
                new WarmthChart(AXIS, new LevelScale(9.5, 0.5, 2), Optional.empty(), curve(9.5), NOTHING, NOTHING);

        assertThat(lines(chart).get(1)).startsWith("9.5  ⎺");
    }
}
