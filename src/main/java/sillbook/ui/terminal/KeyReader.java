// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import sillbook.ui.draw.Key;

/** Reads a terminal until its end and tells what was typed and pasted. */
final class KeyReader {
    private static final long LOOK_AGAIN_AFTER_MILLIS = 1;

    private final InputStream terminal;
    private final InputSplitter splitter;

    KeyReader(InputStream terminal, Consumer<Input> listener) {
        this.terminal = terminal;
        splitter = new InputSplitter(new Teller(listener));
    }

    /** Returns at the end of the stream, which is when the terminal is gone. */
    void readAll() throws IOException {
        while (true) {
            if (splitter.patienceMillis() > 0 && !comesWithin(splitter.patienceMillis())) {
                splitter.giveUp();
                continue;
            }
            int octet = terminal.read();
            if (octet < 0) {
                return;
            }
            splitter.accept(octet);
        }
    }

    private boolean comesWithin(int millis) throws IOException {
        long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        while (terminal.available() == 0) {
            if (System.nanoTime() - deadline > 0) {
                return false;
            }
            pause();
        }
        return true;
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(LOOK_AGAIN_AFTER_MILLIS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("reading the terminal was interrupted", stopped);
        }
    }

    /** Turns what belongs together into input. */
    private record Teller(Consumer<Input> listener, KeyDecoder decoder) implements InputSplitter.Receiver {
        Teller(Consumer<Input> listener) {
            this(listener, new KeyDecoder());
        }

        @Override
        public void character(int codePoint) {
            listener.accept(new Input.Pressed(Key.of(codePoint)));
        }

        @Override
        public void sequence(String sequence) {
            decoder.decode(sequence).ifPresent(key -> listener.accept(new Input.Pressed(key)));
        }

        @Override
        public void paste(String text) {
            listener.accept(new Input.Pasted(text));
        }
    }
}
