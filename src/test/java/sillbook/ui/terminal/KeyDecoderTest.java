// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.ui.draw.Key;

class KeyDecoderTest {
    private final KeyDecoder decoder = new KeyDecoder();

    private String decode(String sequence) {
        return decoder.decode(sequence.replace('^', '\u001B')).map(Key::words).orElse("nothing");
    }

    /** As xterm's control sequences, the Linux console and the VT220 name them. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "^, Esc", "^[A, Up", "^[B, Down", "^[C, Right", "^[D, Left", "^[H, Home", "^[F, End", "^[1~, Home", "^[4~, End",
        "^[5~, PgUp", "^[6~, PgDn", "^[2~, Insert", "^[3~, Delete", "^[Z, Shift-Tab", "^OP, F1", "^OQ, F2", "^[[A, F1",
                "^[11~, F1",
        "^[15~, F5", "^[24~, F12", "^[1;5D, Ctrl-Left", "^[1;5C, Ctrl-Right", "^[1;2A, Shift-Up", "^[8~, End",
                "^[7~, Home"
    })
    void sequencesAreKeys(String sequence, String words) {
        assertThat(decode(sequence)).isEqualTo(words);
    }

    @Test
    void controlsAreKeys() {
        assertThat(decode("\n")).isEqualTo("Enter");
        assertThat(decode("\t")).isEqualTo("Tab");
        assertThat(decode("\u007F")).isEqualTo("Backspace");
        assertThat(decode("\b")).isEqualTo("Backspace");
        assertThat(decode("\u0003")).isEqualTo("Ctrl-C");
        assertThat(decode("\u001A")).isEqualTo("Ctrl-Z");
        assertThat(decode("\u000C")).isEqualTo("Ctrl-L");
        assertThat(decode("\u0015")).isEqualTo("Ctrl-U");
        assertThat(decode("\u0017")).isEqualTo("Ctrl-W");
        assertThat(decode("\u0000")).isEqualTo("nothing");
    }

    /** Focus reports, mice, cursor reports, keys of newer protocols: never asked for, and never taken for the letters they are made of. */
    @ParameterizedTest(name = "{0} is nothing")
    @CsvSource({"^[I", "^[O", "^[<0;3;4M", "^[27;5;9~", "^[97;5u", "^[12;40R", "^[?62c", "^[99~", "^Oz"})
    void whatIsNotKnownIsDroppedWhole(String sequence) {
        assertThat(decode(sequence)).isEqualTo("nothing");
        assertThat(decode("^[A")).isEqualTo("Up");
    }
}
