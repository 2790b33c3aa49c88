// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class InputSplitterTest {
    private final List<String> heard = new ArrayList<>();
    private final InputSplitter splitter = new InputSplitter(new InputSplitter.Receiver() {
        @Override
        public void character(int codePoint) {
            heard.add(Character.toString(codePoint));
        }

        @Override
        public void sequence(String sequence) {
            heard.add("<" + sequence.replace('\u001B', '^') + ">");
        }

        @Override
        public void paste(String text) {
            heard.add("paste(" + text + ")");
        }
    });

    private void send(String text) {
        for (byte octet : text.getBytes(StandardCharsets.UTF_8)) {
            splitter.accept(octet & 0xFF);
        }
    }

    @Test
    void charactersControlsAndSequencesComeApart() {
        send("aé🌷\u0003\u001B[A\u001BOP\u001B[1;5D\u001B[[A\u001B[3~z");

        assertThat(heard)
                .containsExactly("a", "é", "🌷", "<\u0003>", "<^[A>", "<^OP>", "<^[1;5D>", "<^[[A>", "<^[3~>", "z");
    }

    @Test
    void aLoneEscapeWaitsShortlyAndASequenceBegunLonger() {
        assertThat(splitter.patienceMillis()).isZero();
        send("\u001B");
        assertThat(splitter.patienceMillis()).isBetween(5, 100);
        send("[1");
        assertThat(splitter.patienceMillis()).isGreaterThan(100);
        send("A");
        assertThat(splitter.patienceMillis()).isZero();
    }

    @Test
    void escapeFollowedByALetterIsTwoKeys() {
        send("\u001Bq\u001B\u001B[A");
        assertThat(heard).containsExactly("<^>", "q", "<^>", "<^[A>");
    }

    @Test
    void whatNothingFollowsIsTakenForKeysAndATornSequenceIsDropped() {
        send("\u001B");
        splitter.giveUp();
        send("\u001B[");
        splitter.giveUp();
        send("\u001BO");
        splitter.giveUp();
        send("\u001B[1;5");
        splitter.giveUp();
        send("x");
        assertThat(heard).containsExactly("<^>", "<^>", "[", "<^>", "O", "x");
    }

    @Test
    void aControlWithinASequenceBreaksItOff() {
        send("\u001B[1\u0003\u001B[2\u001B[A");
        assertThat(heard).containsExactly("<\u0003>", "<^[A>");
    }

    @Test
    void aPasteIsOneTextWhateverItHolds() {
        send("\u001B[200~q\r\nx\ry\u001B[A\u001B[201\u001B[201~b");
        assertThat(heard).containsExactly("paste(q\nx\ny\u001B[A\u001B[201)", "b");
    }

    @Test
    void aPasteWhoseEndIsLostEndsInSilence() {
        send("\u001B[200~half");
        assertThat(splitter.patienceMillis()).isGreaterThan(1000);
        splitter.giveUp();
        send("b");
        assertThat(heard).containsExactly("paste(half)", "b");
    }

    @Test
    void bytesThatAreNoUtf8ArePassedOver() {
        for (int octet :
                new int[] {0x80, 'a', 0xC3, 'b', 0xE2, 0x82, 'c', 0xFF, 'd', 0xC0, 0xAF, 'e', 0xED, 0xA0, 0x80, 'f'}) {
            splitter.accept(octet);
        }
        assertThat(heard).containsExactly("a", "b", "c", "d", "e", "f");
    }

    /** As over a slow line: a pause at any place within a sequence that is shorter than its patience changes nothing. */
    @Test
    void everySplitPointGivesTheSame() {
        String all = "é\u001B[A\u001BOP\u001B[24~\u001B[200~pas\u001Bte\u001B[201~🌷";
        send(all);
        List<String> whole = List.copyOf(heard);
        byte[] bytes = all.getBytes(StandardCharsets.UTF_8);
        for (int split = 0; split <= bytes.length; split++) {
            heard.clear();
            int at = split;
            IntStream.range(0, at).forEach(i -> splitter.accept(bytes[i] & 0xFF));
            assertThat(heard.size() == whole.size() || splitter.patienceMillis() > 0 || at < bytes.length)
                    .isTrue();
            IntStream.range(at, bytes.length).forEach(i -> splitter.accept(bytes[i] & 0xFF));
            assertThat(heard).as("split at %d", split).isEqualTo(whole);
        }
    }

    @RepeatedTest(200)
    void anyBytesLeaveItReadyForTheNextKey(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        int[] likely = {0x1B, '[', 'O', ';', '1', '~', 'A', 0xC3, 0xA9, 0xF0, 0x9F};
        for (int i = 0; i < 50; i++) {
            splitter.accept(random.nextBoolean() ? random.nextInt(256) : likely[random.nextInt(likely.length)]);
        }
        while (splitter.patienceMillis() > 0) {
            splitter.giveUp();
        }
        heard.clear();
        send("q");
        assertThat(heard).containsExactly("q");
    }
}
