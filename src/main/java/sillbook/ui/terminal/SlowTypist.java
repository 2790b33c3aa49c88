// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;

/** Keys that come one after the other, each when there was time to answer the one before. */
@SuppressWarnings("InputStreamSlowMultibyteRead") // keys are read one by one
final class SlowTypist extends InputStream {
    private static final long MILLIS_FOR_AN_ANSWER = 40;

    private final Iterator<String> keys;
    private InputStream typed = InputStream.nullInputStream();

    /** Types these, each as a terminal sends it. */
    SlowTypist(List<String> keys) {
        this.keys = keys.iterator();
    }

    @Override
    public int read() throws IOException {
        int octet = typed.read();
        if (octet >= 0 || !keys.hasNext()) {
            return octet;
        }
        pause();
        typed = new ByteArrayInputStream(keys.next().getBytes(StandardCharsets.UTF_8));
        return typed.read();
    }

    @Override
    public int available() throws IOException {
        return typed.available();
    }

    private static void pause() {
        try {
            Thread.sleep(MILLIS_FOR_AN_ANSWER);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
