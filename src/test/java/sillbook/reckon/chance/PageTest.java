// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.ThreePoints;

/** The tables of docs/explanation/how-sure-a-plan-is.md, worked out anew. */
class PageTest {
    private static final Path PAGE = Path.of("docs/explanation/how-sure-a-plan-is.md");

    private static void hold(String row, Function<MatchResult, String> anew) throws IOException {
        List<MatchResult> rows = Pattern.compile(row, Pattern.MULTILINE)
                .matcher(Files.readString(PAGE, UTF_8))
                .results()
                .toList();
        assertThat(rows).hasSizeGreaterThan(1);
        assertThat(rows).allSatisfy(one -> assertThat(anew.apply(one)).isEqualTo(one.group()));
    }

    private static int hundredths(double chance) {
        return (int) Math.round(100 * chance);
    }

    @Test
    void bareDays() throws IOException {
        Spell spell = Spell.of(Spell.days(new ThreePoints(16, 21, 28)), Spell.days(new ThreePoints(6, 8, 10)));
        hold("^\\| (\\d) days \\| (\\d) \\| .* of 32 days .*$", row -> {
            int apart = Integer.parseInt(row.group(1));
            int pots = Integer.parseInt(row.group(2));
            Covering season = Covering.of(
                    IntStream.range(0, pots)
                            .mapToObj(pot -> spell.later(pot * apart))
                            .toList(),
                    21,
                    32);
            double least =
                    IntStream.rangeClosed(25, 50).mapToDouble(season::on).min().orElseThrow();
            return "| " + apart + " days | " + pots + " | " + Math.round(10 * season.bareDays()) / 10.0
                    + " of 32 days | " + hundredths(least) + " in 100 |";
        });
    }

    @Test
    void potsForAWish() throws IOException {
        DayChances begins = Spell.days(new ThreePoints(14, 19, 26));
        hold("^\\| (\\d+) days \\| (\\d) \\| \\d on .*$", row -> {
            Spell spell = Spell.of(begins, DayChances.on(Integer.parseInt(row.group(1))));
            Spares spares =
                    Spares.fewest(spell, 0, Integer.parseInt(row.group(2))).orElseThrow();
            Map<Integer, Long> onDay = spares.pulls().stream()
                    .collect(Collectors.groupingBy(pull -> pull, TreeMap::new, Collectors.counting()));
            String pulls = onDay.entrySet().stream()
                    .map(day -> day.getValue() + " on " + -day.getKey())
                    .collect(Collectors.joining(", "));
            return "| " + row.group(1) + " days | " + row.group(2) + " | " + pulls + " | " + hundredths(spares.chance())
                    + " in 100 |";
        });
    }
}
