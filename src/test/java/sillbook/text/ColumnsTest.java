// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class ColumnsTest {
    @Test
    void aTextTooLongEndsInTwoPoints() {
        assertThat(Columns.fit("'Umbrella Street'", 17)).isEqualTo("'Umbrella Street'");
        assertThat(Columns.fit("'Umbrella Street'", 16)).isEqualTo("'Umbrella Stre..");
        assertThat(Columns.fit("球根球根", 7)).isEqualTo("球根..");
        assertThat(Columns.fit("球根球根", 6)).isEqualTo("球根..");
        assertThat(Columns.fit("abc", 2)).isEqualTo("..");
        assertThat(Columns.fit("abc", 1)).isEqualTo(".");
        assertThat(Columns.fit("abc", 0)).isEmpty();
        assertThat(Columns.fit("abc", -3)).isEmpty();
    }

    @Test
    void aSignInBracketsStaysWithTheWordBeforeIt() {
        assertThat(Columns.wrap("keep it dry (▫)", 12)).containsExactly("keep it", "dry (▫)");
        assertThat(Columns.wrap("keep it dry (▫) and cold (?)", 15)).containsExactly("keep it dry (▫)", "and cold (?)");
        assertThat(Columns.wrap("keep it (dry) here", 7)).containsExactly("keep it", "(dry)", "here");
    }

    @Test
    void textStandsFlushLeftOrRight() {
        assertThat(Columns.left("T4", 5)).isEqualTo("T4   ");
        assertThat(Columns.right("9.6", 5)).isEqualTo("  9.6");
        assertThat(Columns.left("球根球", 4)).isEqualTo("球..");
        assertThat(Columns.head("球根球", 5)).isEqualTo("球根");
    }

    @Test
    void wrappedLinesBreakAtSpacesAndInsideAWordOnlyIfItMust() {
        assertThat(Columns.wrap("Move it colder, do not bring it in.", 12))
                .containsExactly("Move it", "colder, do", "not bring it", "in.");
        assertThat(Columns.wrap("a Glory-of-the-snow b", 6)).containsExactly("a", "Glory-", "of-the", "-snow", "b");
        assertThat(Columns.wrap("", 6)).containsExactly("");
        assertThat(Columns.wrap("  球根  球  ", 4)).containsExactly("球根", "球");
        assertThat(Columns.wrap("球根", 1)).containsExactly("球", "根");
    }

    @RepeatedTest(300)
    void widthsAreKeptAndNothingIsLost(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        String text = SafeTest.randomText(random);
        int columns = 2 + random.nextInt(20);

        assertThat(Width.of(Columns.left(text, columns))).isEqualTo(columns);
        assertThat(Width.of(Columns.right(text, columns))).isEqualTo(columns);
        assertThat(Width.of(Columns.fit(text, columns))).isLessThanOrEqualTo(columns);
        List<String> lines = Columns.wrap(text, columns);
        assertThat(lines).isNotEmpty().allMatch(line -> Width.of(line) <= columns);
        assertThat(lines.stream().collect(Collectors.joining()).replace(" ", ""))
                .isEqualTo(Safe.text(text).replace(" ", ""));
    }
}
