// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Unit;
import sillbook.model.JobKind;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Place.Sort;
import sillbook.reckon.dates.Window;

/** The table of docs/jobs.md, held to what the program does. */
class JobsPageTest {
    private static final String PAGE = "docs/jobs.md";
    private static final List<Row> ROWS =
            MarkdownTable.of(PAGE, "<!-- the jobs").rows().stream().map(Row::of).toList();

    private static final Set<FigureName> LIVES_ON = EnumSet.of(FigureName.FEED, FigureName.REST);

    /** One row of the table. */
    private record Row(JobKind kind, List<String> days, List<String> sources) {
        static Row of(List<String> cells) {
            String key = MarkdownTable.quoted(cells.get(0)).get(0);
            return new Row(
                    JobKind.valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_')),
                    cells.subList(2, 5).stream()
                            .map(cell -> MarkdownTable.quoted(cell).get(0))
                            .toList(),
                    MarkdownTable.quoted(cells.get(6)));
        }
    }

    static Stream<Row> rows() {
        return ROWS.stream();
    }

    @Test
    void everyKindOfJobHasOneRow() {
        assertThat(ROWS).extracting(Row::kind).containsExactlyInAnyOrder(JobKind.values());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theSourcesAreInTheHandbook(Row row) {
        assertThat(row.sources())
                .isNotEmpty()
                .allSatisfy(key -> assertThat(Handbook.standard().source(key)).isPresent());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theDaysAreThoseOfTheTable(Row row) {
        JobScene scene = JobScene.of(row.kind());
        Window window = job(scene.outlook(), row.kind()).orElseThrow().window();
        assertThat(List.of(window.earliest(), window.likely(), window.latest()))
                .isEqualTo(row.days().stream().map(day -> day(scene, day)).toList());
    }

    static Stream<Arguments> closings() {
        return ROWS.stream().flatMap(row -> {
            int count = JobScene.of(row.kind()).closings().size();
            return Stream.iterate(0, each -> each < count, each -> each + 1).map(each -> arguments(row, each));
        });
    }

    @ParameterizedTest
    @MethodSource("closings")
    void eachClosingClosesIt(Row row, int closing) {
        JobScene scene = JobScene.of(row.kind());
        Winter closed = scene.closings().get(closing).apply(scene.winter());
        assertThat(job(closed.on(scene.today()), row.kind())
                        .filter(job -> !job.on().isAfter(closed.day(scene.today()))))
                .isEmpty();
    }

    private static Optional<? extends Job> job(Outlook outlook, JobKind kind) {
        return switch (kind) {
            case CHECK ->
                outlook.places().stream()
                        .flatMap(place -> place.round().stream())
                        .findFirst();
            case DAILY_CARE -> outlook.today().dailyCare();
            case DIG_TRENCH, POTS_IN, COVER_TRENCH, LIFT_POTS ->
                outlook.today().ground().stream()
                        .filter(job -> job.kind() == kind)
                        .findFirst();
            default ->
                outlook.pots(outlook.today().season()).stream()
                        .flatMap(pot -> pot.next().stream())
                        .filter(job -> job.kind() == kind)
                        .findFirst();
        };
    }

    /** A day as the table writes it: {@code cold-began + cold low}. */
    private static LocalDate day(JobScene scene, String written) {
        String[] terms = written.split(" (?=[-+] )", -1);
        LocalDate day = scene.base(terms[0]);
        for (String term : Arrays.asList(terms).subList(1, terms.length)) {
            long days = days(term.substring(2));
            day = term.startsWith("-") ? day.minusDays(days) : day.plusDays(days);
        }
        return day;
    }

    private static long days(String term) {
        if (term.equals("interval")) {
            return Sort.CELLAR.usualCheckDays();
        }
        String[] words = term.split(" ", -1);
        if (words[1].equals("weeks") || words[1].equals("days")) {
            return (words[1].equals("weeks") ? 7L : 1L) * Integer.parseInt(words[0]);
        }
        FigureName name = FigureName.of(words[0]).orElseThrow();
        Range range = Figures.of(winter().journal(), Handbook.standard(), LocalDate.EPOCH)
                .find(Kind.of(LIVES_ON.contains(name) ? "amaryllis" : "tulip"), name)
                .orElseThrow()
                .range();
        double end = switch (words[1]) {
            case "low" -> range.low();
            case "typical" -> range.typical();
            case "high" -> range.high();
            default -> throw new AssertionError("no end of a range: " + term);
        };
        return Math.round(name.unit() == Unit.WEEKS ? 7 * end : end);
    }

    @Test
    void theTableForComingInIsTheOneThatIsUsed() {
        List<ComingIn.Row> written = MarkdownTable.of(PAGE, "<!-- coming in").rows().stream()
                .map(cells -> new ComingIn.Row(
                        ComingIn.Weeks.valueOf(constant(cells.get(0))),
                        constants(ComingIn.Roots.class, cells.get(1)),
                        constants(ComingIn.Shoot.class, cells.get(2)),
                        Verdict.valueOf(
                                constant(MarkdownTable.quoted(cells.get(3)).get(0)))))
                .toList();
        assertThat(written).isEqualTo(ComingIn.TABLE);
    }

    private static String constant(String key) {
        return key.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private static <E extends Enum<E>> Set<E> constants(Class<E> type, String cell) {
        if (cell.equals("any")) {
            return EnumSet.allOf(type);
        }
        Set<E> set = EnumSet.noneOf(type);
        for (String key : cell.split(", ", -1)) {
            set.add(Enum.valueOf(type, constant(key)));
        }
        return set;
    }
}
