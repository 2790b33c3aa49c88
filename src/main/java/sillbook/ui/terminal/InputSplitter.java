// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Parts the bytes of a terminal into what belongs together: a character, an escape sequence, a paste. Where a sequence comes in pieces, as
 * over a slow line, it waits for the rest; how long is for the caller to keep ({@link #patienceMillis}, {@link #giveUp}).
 */
final class InputSplitter {
    private static final int ESCAPE = 0x1B;
    private static final String PASTE_BEGINS = "\u001B[200~";
    private static final byte[] PASTE_ENDS = "\u001B[201~".getBytes(StandardCharsets.US_ASCII);

    /** An Escape key on its own is told from the beginning of a sequence by nothing following it. */
    private static final int PATIENCE_AFTER_ESCAPE = 25;

    private static final int PATIENCE_WITHIN_SEQUENCE = 250;
    private static final int PATIENCE_WITHIN_PASTE = 3000;

    /** Takes what belongs together. */
    interface Receiver {
        /** A character that is no control. */
        void character(int codePoint);

        /** A control character, or a whole escape sequence. */
        void sequence(String sequence);

        void paste(String text);
    }

    private final Receiver receiver;
    private final StringBuilder sequence = new StringBuilder();
    private final ByteArrayOutputStream pasted = new ByteArrayOutputStream();
    private final Utf8Assembler utf8 = new Utf8Assembler();
    private boolean pasting;

    InputSplitter(Receiver receiver) {
        this.receiver = receiver;
    }

    void accept(int octet) {
        if (pasting) {
            acceptPasted(octet);
        } else if (sequence.isEmpty()) {
            acceptPlain(octet);
        } else {
            acceptWithinSequence(octet);
        }
    }

    /** Milliseconds worth waiting for another byte before {@link #giveUp}; 0 when nothing is begun. */
    int patienceMillis() {
        if (pasting) {
            return PATIENCE_WITHIN_PASTE;
        }
        return switch (sequence.length()) {
            case 0 -> 0;
            case 1 -> PATIENCE_AFTER_ESCAPE;
            default -> PATIENCE_WITHIN_SEQUENCE;
        };
    }

    /** Nothing more came: what is there must do. A sequence torn off in its middle is dropped, so that its rest is not taken for keys. */
    void giveUp() {
        if (pasting) {
            endPaste(pasted.size());
        } else if (sequence.length() > 2) {
            sequence.setLength(0);
        } else {
            releaseAsKeys();
        }
    }

    private void acceptPlain(int octet) {
        if (octet == ESCAPE) {
            sequence.append((char) ESCAPE);
        } else if (octet < ' ' || octet == 0x7F) {
            receiver.sequence(String.valueOf((char) octet));
        } else {
            utf8.accept(octet).ifPresent(receiver::character);
        }
    }

    private void acceptWithinSequence(int octet) {
        boolean belongs = octet >= ' ' && octet < 0x7F && (sequence.length() > 1 || octet == '[' || octet == 'O');
        if (!belongs) {
            giveUp();
            accept(octet);
            return;
        }
        sequence.append((char) octet);
        if (isWhole()) {
            String whole = sequence.toString();
            sequence.setLength(0);
            deliver(whole);
        }
    }

    /** {@code ESC O x}, the console's {@code ESC [ [ x}, or {@code ESC [} with parameters up to its final letter. */
    private boolean isWhole() {
        int last = sequence.charAt(sequence.length() - 1);
        if (sequence.length() < 3) {
            return false;
        }
        boolean singleShift = sequence.charAt(1) == 'O';
        boolean console = sequence.charAt(2) == '[';
        if (singleShift) {
            return !Character.isDigit(last);
        }
        return console ? sequence.length() == 4 : last >= '@';
    }

    private void deliver(String whole) {
        if (whole.equals(PASTE_BEGINS)) {
            pasting = true;
        } else {
            receiver.sequence(whole);
        }
    }

    private void releaseAsKeys() {
        String keys = sequence.toString();
        sequence.setLength(0);
        if (!keys.isEmpty()) {
            receiver.sequence(keys.substring(0, 1));
            keys.substring(1).codePoints().forEach(receiver::character);
        }
    }

    private void acceptPasted(int octet) {
        pasted.write(octet);
        if (octet == '~' && endsPaste(pasted.toByteArray())) {
            endPaste(pasted.size() - PASTE_ENDS.length);
        }
    }

    private static boolean endsPaste(byte[] bytes) {
        int from = bytes.length - PASTE_ENDS.length;
        return from >= 0 && Arrays.equals(bytes, from, bytes.length, PASTE_ENDS, 0, PASTE_ENDS.length);
    }

    private void endPaste(int length) {
        String text = new String(pasted.toByteArray(), 0, length, StandardCharsets.UTF_8);
        pasted.reset();
        pasting = false;
        receiver.paste(text.replace("\r\n", "\n").replace('\r', '\n'));
    }
}
