// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.reckon.fit.Suggestion.Basis;
import sillbook.reckon.fit.Suggestion.Published;

class SuggestionTest {
    private static final Bed SIX_INCHES = new Bed(15.24, Bed.ofGrade(12), Spacing.USUAL);
    private static final Optional<Published> SIX = Optional.of(new Published(6, 15.24));

    @Test
    void theGrowersOwnThenThePublishedThenHalfTheSurface() {
        assertThat(Suggestion.of(Optional.of(5), SIX, SIX_INCHES)).isEqualTo(new Suggestion(5, 5, Basis.OWN));
        assertThat(Suggestion.of(Optional.empty(), SIX, SIX_INCHES)).isEqualTo(new Suggestion(6, 6, Basis.PUBLISHED));
        assertThat(Suggestion.of(Optional.empty(), Optional.empty(), SIX_INCHES).basis())
                .isEqualTo(Basis.HALF_SURFACE);
    }

    @Test
    void aCountOfAnotherPotIsNotTaken() {
        Bed wide = new Bed(19, Bed.ofGrade(12), Spacing.USUAL);

        assertThat(Suggestion.of(Optional.empty(), SIX, wide)).isEqualTo(new Suggestion(12, 12, Basis.HALF_SURFACE));
    }

    /** Half the surface of a pot of six inches (Nebraska), by grade. */
    @ParameterizedTest
    @CsvSource({"12, 8", "9, 14", "8, 18"})
    void halfTheSurface(double grade, int count) {
        Suggestion half =
                Suggestion.of(Optional.empty(), Optional.empty(), new Bed(15.24, Bed.ofGrade(grade), Spacing.PACKED));
        assertThat(half).isEqualTo(new Suggestion(count, count, Basis.HALF_SURFACE));
    }

    @Test
    void neverMoreThanAreKnownToFit() {
        Suggestion crowd = Suggestion.of(Optional.of(50), SIX, SIX_INCHES);
        assertThat(crowd).isEqualTo(new Suggestion(8, 50, Basis.OWN));
        assertThat(crowd.isCut()).isTrue();
        assertThat(Suggestion.of(Optional.empty(), SIX, SIX_INCHES).isCut()).isFalse();
        assertThat(Suggestion.of(Optional.of(50), SIX, SIX_INCHES.with(Spacing.TOUCHING))
                        .count())
                .isEqualTo(11);
        assertThat(Suggestion.of(Optional.empty(), SIX, new Bed(15, 12, Spacing.USUAL)))
                .isEqualTo(new Suggestion(1, 6, Basis.PUBLISHED));
    }

    @Test
    void noneWhereNotOneFits() {
        assertThat(Suggestion.of(Optional.of(3), SIX, new Bed(3, 4, Spacing.USUAL))
                        .count())
                .isZero();
        Bed narrow = new Bed(9, 8.5, Spacing.USUAL);
        assertThat(Suggestion.of(Optional.empty(), Optional.empty(), narrow).count())
                .isZero();
        assertThat(Suggestion.of(Optional.empty(), Optional.empty(), narrow.with(Spacing.TOUCHING))
                        .count())
                .isEqualTo(1);
    }
}
