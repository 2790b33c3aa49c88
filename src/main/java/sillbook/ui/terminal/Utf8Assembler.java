// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;

/** Puts the bytes of a character together as they come; bytes that are no UTF-8 (RFC 3629) are passed over. */
final class Utf8Assembler {
    private static final int NOT_DECODED = 0xFFFD;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private int missing;

    /** The character this byte completes, if it does. */
    OptionalInt accept(int octet) {
        boolean continues = (octet & 0xC0) == 0x80;
        if (!continues) {
            bytes.reset();
            missing = following(octet);
        } else if (missing == 0) {
            return OptionalInt.empty();
        } else {
            missing--;
        }
        bytes.write(octet);
        return missing == 0 ? decoded() : OptionalInt.empty();
    }

    private OptionalInt decoded() {
        String text = bytes.toString(StandardCharsets.UTF_8);
        bytes.reset();
        int codePoint = text.codePointAt(0);
        boolean one = text.codePointCount(0, text.length()) == 1 && codePoint != NOT_DECODED;
        return one ? OptionalInt.of(codePoint) : OptionalInt.empty();
    }

    private static int following(int octet) {
        if (octet >= 0xF0) {
            return 3;
        }
        if (octet >= 0xE0) {
            return 2;
        }
        return octet >= 0xC0 ? 1 : 0;
    }
}
