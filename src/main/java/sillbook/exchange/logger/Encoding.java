// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import sillbook.words.logger.Understood.TextCode;

/**
 * How a file's bytes are read. Figures, dates and separators are ASCII, and the same in UTF-8 and in Latin-1, so those two are read as they
 * are; only UTF-16 is turned into UTF-8 on the way.
 */
enum Encoding {
    UTF_8_MARKED(TextCode.UTF_8, 3),
    PLAIN(TextCode.UTF_8, 0),
    UTF_16_LITTLE(TextCode.UTF_16, 2),
    UTF_16_BIG(TextCode.UTF_16, 2);

    private final TextCode code;
    private final int markBytes;

    Encoding(TextCode code, int markBytes) {
        this.code = code;
        this.markBytes = markBytes;
    }

    TextCode code() {
        return code;
    }

    /** By the mark at its beginning (The Unicode Standard, section 23.8). */
    static Encoding of(Source source) throws IOException {
        try (InputStream in = source.open()) {
            byte[] first = in.readNBytes(4);
            if (starts(first, 0xEF, 0xBB, 0xBF)) {
                return UTF_8_MARKED;
            }
            if (starts(first, 0xFF, 0xFE)) {
                return UTF_16_LITTLE;
            }
            return starts(first, 0xFE, 0xFF) ? UTF_16_BIG : PLAIN;
        }
    }

    private static boolean starts(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** The bytes after the mark, in UTF-8 or Latin-1. */
    InputStream open(Source source) throws IOException {
        InputStream in = source.open();
        in.skipNBytes(markBytes);
        return switch (this) {
            case UTF_8_MARKED, PLAIN -> in;
            case UTF_16_LITTLE -> new InUtf8(new InputStreamReader(in, UTF_16LE));
            case UTF_16_BIG -> new InUtf8(new InputStreamReader(in, UTF_16BE));
        };
    }

    /** What a few of these bytes say: UTF-8, or where they are none, Latin-1. */
    static String text(byte[] bytes) {
        return new String(bytes, charset(bytes));
    }

    static boolean isUtf8(byte[] bytes) {
        return charset(bytes).equals(UTF_8);
    }

    private static Charset charset(byte[] bytes) {
        try {
            UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return UTF_8;
        } catch (CharacterCodingException otherwise) {
            return ISO_8859_1;
        }
    }

    /** Characters as the bytes of UTF-8. */
    private static final class InUtf8 extends InputStream {
        private static final int CHARACTERS = 1 << 15;

        private final InputStreamReader characters;
        private final char[] some = new char[CHARACTERS];
        private byte[] bytes = {};
        private int next;

        InUtf8(InputStreamReader characters) {
            this.characters = characters;
        }

        @Override
        public int read() throws IOException {
            return isAtEnd() ? -1 : bytes[next++] & 0xFF;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            if (isAtEnd()) {
                return -1;
            }
            int count = Math.min(length, bytes.length - next);
            System.arraycopy(bytes, next, into, offset, count);
            next += count;
            return count;
        }

        private boolean isAtEnd() throws IOException {
            if (next < bytes.length) {
                return false;
            }
            int count = characters.read(some, 0, CHARACTERS);
            bytes = count < 0 ? new byte[0] : new String(some, 0, count).getBytes(UTF_8);
            next = 0;
            return count < 0;
        }

        @Override
        public void close() throws IOException {
            characters.close();
        }
    }
}
