// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoldTest {
    @ParameterizedTest(name = "{0} is found as {1}")
    @CsvSource({
        "Écru, ecru",
        "ECRU, ecru",
        "'E\u0301cru', ecru",
        "Straße, strasse",
        "Bjørn, bjorn",
        "Œuvre, oeuvre",
        "TITLE, title",
        "ılık, ilik",
        "ﬁne, fine",
        "’tis, '''tis'",
        "Ångström, angstrom",
        "Þór, thor",
        "球根, 球根"
    })
    void accentsCaseAndSpecialLettersFallAway(String text, String folded) {
        assertThat(Fold.of(text)).isEqualTo(folded);
    }

    @Test
    void theMachinesLanguageHasNoSay() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("tr"));
        try {
            assertThat(Fold.of("TITLE Éİ")).isEqualTo("title ei");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void foundWordsAreToldInColumnsOfTheShownText() {
        assertThat(Fold.find("Écru écru", "ECRU")).containsExactly(new Span(0, 4), new Span(5, 9));
        assertThat(Fold.find("球根 frost", "frost")).containsExactly(new Span(5, 10));
        assertThat(Fold.find("Straße", "ass")).containsExactly(new Span(3, 5));
        assertThat(Fold.find("aaa", "aa")).containsExactly(new Span(0, 2));
        assertThat(Fold.find("frost", "")).isEqualTo(List.of());
        assertThat(Fold.find("frost", "mouse")).isEmpty();
        assertThat(Fold.contains("Umbrélla", "BREL")).isTrue();
        assertThat(new Span(3, 5).columns()).isEqualTo(2);
    }
}
