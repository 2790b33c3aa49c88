// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WarningTest {
    private static final LocalDate DAY = LocalDate.of(2027, 1, 1);
    private static final DayCount NEED = DayCount.of(84, 105, 119);

    private static final List<Warning> ONE_OF_EACH = List.of(
            new Warning.TooLittleCold(56, 0, NEED, 84),
            new Warning.TooMuchCold(130, NEED, Optional.empty(), false),
            new Warning.Late(DAY, Window.on(DAY)),
            new Warning.TooLate(DAY, Window.on(DAY)),
            new Warning.NotReachable(DAY, Window.on(DAY), Judgement.Reason.BEFORE_START),
            new Warning.NoPottedCold(),
            new Warning.DryCredit(80, 70),
            new Warning.NoCommonTime(84, 0, 50, 1),
            new Warning.ColdAndNoCold(List.of(0)));

    /** Answers with the warning itself, so that a case led astray shows. */
    private static final Warning.Cases<Warning> ITSELF = new Warning.Cases<>() {
        @Override
        public Warning tooLittleCold(Warning.TooLittleCold warning) {
            return warning;
        }

        @Override
        public Warning tooMuchCold(Warning.TooMuchCold warning) {
            return warning;
        }

        @Override
        public Warning late(Warning.Late warning) {
            return warning;
        }

        @Override
        public Warning tooLate(Warning.TooLate warning) {
            return warning;
        }

        @Override
        public Warning notReachable(Warning.NotReachable warning) {
            return warning;
        }

        @Override
        public Warning noPottedCold(Warning.NoPottedCold warning) {
            return warning;
        }

        @Override
        public Warning dryCredit(Warning.DryCredit warning) {
            return warning;
        }

        @Override
        public Warning noCommonTime(Warning.NoCommonTime warning) {
            return warning;
        }

        @Override
        public Warning coldAndNoCold(Warning.ColdAndNoCold warning) {
            return warning;
        }
    };

    @Test
    void every_sort_of_warning_is_here() {
        assertThat(ONE_OF_EACH)
                .extracting(warning -> (Object) warning.getClass())
                .containsExactlyInAnyOrder((Object[]) Warning.class.getPermittedSubclasses());
    }

    @Test
    void each_has_its_own_code() {
        assertThat(ONE_OF_EACH)
                .extracting(Warning::code)
                .containsExactly(
                        "too-little-cold",
                        "too-much-cold",
                        "late",
                        "too-late",
                        "not-reachable",
                        "no-potted-cold",
                        "dry-credit",
                        "no-common-time",
                        "cold-and-no-cold");
    }

    @Test
    void each_goes_to_its_own_case() {
        for (Warning warning : ONE_OF_EACH) {
            assertThat(warning.fold(ITSELF)).isSameAs(warning);
        }
    }
}
