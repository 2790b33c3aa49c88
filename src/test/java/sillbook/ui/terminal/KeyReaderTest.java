// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;

class KeyReaderTest {
    private static List<Input> read(InputStream stream) throws IOException {
        List<Input> heard = new ArrayList<>();
        new KeyReader(stream, heard::add).readAll();
        return heard;
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void readsKeysAndPastesToTheEnd() throws IOException {
        assertThat(read(bytes("é\u001B[A\u001B[200~q\n\u001B[201~\n")))
                .containsExactly(
                        new Input.Pressed(Key.of('é')),
                        new Input.Pressed(Keys.UP),
                        new Input.Pasted("q\n"),
                        new Input.Pressed(Keys.ENTER));
    }

    @Test
    void anEscapeThatNothingFollowsIsAKey() throws IOException {
        assertThat(read(bytes("\u001B"))).containsExactly(new Input.Pressed(Keys.ESCAPE));
    }

    @Test
    void aSequenceThatComesInPiecesIsOneKey() throws IOException {
        assertThat(read(new Hesitant("\u001B[A"))).containsExactly(new Input.Pressed(Keys.UP));
    }

    /** Says twice that nothing is there before it says that something is. */
    private static final class Hesitant extends ByteArrayInputStream {
        private int asked;

        Hesitant(String text) {
            super(text.getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public synchronized int available() {
            asked++;
            return asked % 3 == 0 ? super.available() : 0;
        }
    }
}
