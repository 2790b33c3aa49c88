// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.words.Shelves;

class CompletionsTest {
    private final Bench bench = Shelves.bench();

    private static String shown(Completion completion) {
        return completion.aside().isEmpty() ? completion.shown() : completion.shown() + "  " + completion.aside();
    }

    private List<String> offered(String line) {
        return QuickLine.read(line, bench).completions().stream()
                .map(CompletionsTest::shown)
                .toList();
    }

    static Stream<Arguments> words() {
        return Stream.of(
                arguments(
                        "6 x Marrow Lane x5, 14 oct, 19 cm, fri",
                        List.of(
                                "garage fridge  3 of 9 stand there",
                                "Fri 8 Jan 2027  a second day",
                                "make 'fri' a new place")),
                arguments(
                        "6 x Mar",
                        List.of("Marrow Lane  tulip Triumph", "make 'Mar' a new variety", "make 'Mar' a new place")),
                arguments(
                        "6 x Marrow L",
                        List.of(
                                "Marrow Lane  tulip Triumph",
                                "make 'Marrow L' a new variety",
                                "make 'Marrow L' a new place")),
                arguments("T4 coo", List.of("cool room", "make 'coo' a new place")),
                arguments("T4 ce", List.of("cellar  6 of 20 stand there", "make 'ce' a new place")),
                arguments(
                        "T4 sill",
                        List.of(
                                "kitchen sill  1 of 6 stands there",
                                "parlour sill  0 of 5 stand there",
                                "make 'sill' a new place")),
                arguments("T4 moi", List.of("moist")),
                arguments(
                        "D",
                        List.of(
                                "D1  'Lantern Row' x5",
                                "drained pot",
                                "depth not said",
                                "tipped out",
                                "dug",
                                "dry",
                                "done",
                                "daily care")),
                arguments(
                        "arrived Inkwell, sent Mar",
                        List.of(
                                "Marrow Lane  tulip Triumph",
                                "make 'sent Mar' a new place",
                                "make 'Mar' a new variety")),
                arguments("arrived Inkwell, sent Penny (cro", List.of("crocus")),
                arguments("vari", List.of("variety", "make 'vari' a new variety", "make 'vari' a new place")),
                arguments("6 x Penny (cro", List.of("crocus")),
                arguments("6 x Penny (tulip tri", List.of("tulip Triumph  Triumph")),
                arguments("6 x Inkwell x3, Attic (cel", List.of("cellar")),
                arguments("T4 cellar ", List.of()),
                arguments("", List.of()));
    }

    @ParameterizedTest
    @MethodSource("words")
    void theWordAtTheCaretIsCompletedOwnNamesFirstAndNewThingsLast(String line, List<String> offered) {
        assertThat(offered(line)).isEqualTo(offered);
    }

    @Test
    void aCompletionTakesThePlaceOfItsWord() {
        Completion fridge =
                QuickLine.read("T4 fri, yesterday", 6, bench).completions().get(0);

        assertThat(fridge.applyTo("T4 fri, yesterday")).isEqualTo("T4 garage fridge, yesterday");
        assertThat(fridge.caret()).isEqualTo("T4 garage fridge".length());
    }

    @Test
    void makingSomethingNewGoesOnInBrackets() {
        List<Completion> offered = QuickLine.read("6 x Penny Gloaming", bench).completions();

        assertThat(offered.get(0).applyTo("6 x Penny Gloaming")).isEqualTo("6 x Penny Gloaming (");
        Completion kind =
                QuickLine.read("6 x Penny Gloaming (croc", bench).completions().get(0);
        assertThat(kind.applyTo("6 x Penny Gloaming (croc")).isEqualTo("6 x Penny Gloaming (crocus)");
    }

    @Test
    void aWordTakenOrNotIsNeverLost() {
        assertThat(offered("T4 fridge")).contains("garage fridge  3 of 9 stand there");
        assertThat(QuickLine.read("T4 fridge", 2, bench).completions())
                .extracting(Completion::text)
                .containsExactly("T4");
    }
}
