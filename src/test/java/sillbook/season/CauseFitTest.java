// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.handbook.Handbook;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Failure.Roots;
import sillbook.model.Failure.Sign;

/**
 * The table of signs and causes, held to the page that gives the source of each row: New Mexico State University (bulbs that had too
 * little cold, froze, or lay with fruit), Cornell University (too little cold), Rutgers (carried too fast into warmth), the
 * University of Life Sciences in Lublin (buds that dried up after 12 weeks), Horticulture magazine (what blasts buds).
 */
class CauseFitTest {
    private static final List<List<String>> WRITTEN = MarkdownTable.of(
                    "docs/how-to/failed-pot.md", "<!-- which sign fits")
            .rows();

    @Test
    void theTableIsTheOneThatIsUsed() {
        assertThat(WRITTEN)
                .isEqualTo(CauseFit.TABLE.stream().map(CauseFitTest::written).toList());
    }

    private static List<String> written(CauseFit fit) {
        String found = fit.sign()
                .map(sign -> words(sign))
                .orElseGet(() -> "roots " + words(fit.roots().orElseThrow()));
        String sources = String.join(
                ", ", fit.sources().stream().map(key -> "`" + key + "`").toList());
        return List.of(found, words(fit.cause()), fit.speaksFor() ? "fits" : "speaks against it", sources);
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static Stream<CauseFit> table() {
        return CauseFit.TABLE.stream();
    }

    @ParameterizedTest
    @MethodSource("table")
    void everySourceIsInTheHandbookAndThePairIsFound(CauseFit fit) {
        assertThat(fit.sources())
                .isNotEmpty()
                .allSatisfy(key ->
                        assertThat(Handbook.standard().source(key)).as(key).isPresent());
        Failure found = fit.sign()
                .map(sign -> Failure.NONE.withSigns(java.util.Set.of(sign)))
                .orElseGet(() -> Failure.NONE.withRoots(fit.roots()));
        assertThat(CauseFit.of(fit.cause(), found)).containsExactly(fit);
    }

    @Test
    void everyPairStandsThereOnce() {
        assertThat(CauseFit.TABLE.stream()
                        .map(fit -> List.of(fit.sign(), fit.roots(), fit.cause()))
                        .distinct())
                .hasSameSizeAs(CauseFit.TABLE);
    }

    @ParameterizedTest
    @EnumSource(Sign.class)
    void everySignFitsACause(Sign sign) {
        assertThat(CauseFit.TABLE)
                .anyMatch(fit -> fit.sign().filter(sign::equals).isPresent() && fit.speaksFor());
    }

    @ParameterizedTest
    @EnumSource(Roots.class)
    void ofTheRootsEachWordTells(Roots roots) {
        assertThat(CauseFit.TABLE)
                .anyMatch(fit -> fit.roots().filter(roots::equals).isPresent());
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void everyCauseHasASign(Cause cause) {
        assertThat(CauseFit.TABLE).anyMatch(fit -> fit.cause() == cause && fit.speaksFor());
    }
}
