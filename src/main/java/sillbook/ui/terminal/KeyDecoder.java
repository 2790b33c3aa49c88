// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.ui.draw.Key;

/**
 * From whole escape sequences and control characters to keys, by the terminal library's tables. It is given one sequence at a time, so
 * that one it does not know is dropped whole instead of being taken for the letters it is made of.
 */
final class KeyDecoder {
    private static final Map<KeyType, Key.Name> NAMES = Map.ofEntries(
            Map.entry(KeyType.Enter, Key.Name.ENTER),
            Map.entry(KeyType.Escape, Key.Name.ESCAPE),
            Map.entry(KeyType.Tab, Key.Name.TAB),
            Map.entry(KeyType.Backspace, Key.Name.BACKSPACE),
            Map.entry(KeyType.Delete, Key.Name.DELETE),
            Map.entry(KeyType.Insert, Key.Name.INSERT),
            Map.entry(KeyType.ArrowUp, Key.Name.UP),
            Map.entry(KeyType.ArrowDown, Key.Name.DOWN),
            Map.entry(KeyType.ArrowLeft, Key.Name.LEFT),
            Map.entry(KeyType.ArrowRight, Key.Name.RIGHT),
            Map.entry(KeyType.Home, Key.Name.HOME),
            Map.entry(KeyType.End, Key.Name.END),
            Map.entry(KeyType.PageUp, Key.Name.PAGE_UP),
            Map.entry(KeyType.PageDown, Key.Name.PAGE_DOWN));

    private static final char ESCAPE = 0x1B;

    private final Sequence source = new Sequence();
    private final InputDecoder decoder = new InputDecoder(source);

    KeyDecoder() {
        decoder.addProfile(new DefaultKeyDecodingProfile());
        decoder.addProfile(KeyDecoder::lineEndsOfRxvt);
    }

    /** Home and End as rxvt sends them, which the library's tables lack. */
    private static Collection<CharacterPattern> lineEndsOfRxvt() {
        return List.of(
                new BasicCharacterPattern(new KeyStroke(KeyType.Home), ESCAPE, '[', '7', '~'),
                new BasicCharacterPattern(new KeyStroke(KeyType.End), ESCAPE, '[', '8', '~'));
    }

    Optional<Key> decode(String sequence) {
        List<KeyStroke> strokes = strokes(sequence);
        return strokes.size() == 1 ? key(strokes.get(0)) : Optional.empty();
    }

    private List<KeyStroke> strokes(String sequence) {
        source.offer(sequence);
        List<KeyStroke> strokes = new ArrayList<>();
        try {
            for (KeyStroke stroke = decoder.getNextCharacter(false);
                    stroke != null;
                    stroke = decoder.getNextCharacter(false)) {
                strokes.add(stroke);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("reading a sequence from memory", impossible);
        }
        return strokes;
    }

    /** Alt is not ours: window managers and terminals use it. */
    private static Optional<Key> key(KeyStroke stroke) {
        if (stroke.isAltDown()) {
            return Optional.empty();
        }
        if (stroke.getKeyType() == KeyType.Character) {
            return letterWithCtrl(stroke);
        }
        if (stroke.getKeyType() == KeyType.ReverseTab) {
            return Optional.of(new Key.Named(Key.Name.TAB, false, true));
        }
        return name(stroke.getKeyType()).map(name -> new Key.Named(name, stroke.isCtrlDown(), stroke.isShiftDown()));
    }

    private static Optional<Key> letterWithCtrl(KeyStroke stroke) {
        char letter = Character.toLowerCase(stroke.getCharacter());
        boolean isLetter = letter >= 'a' && letter <= 'z';
        return stroke.isCtrlDown() && isLetter ? Optional.of(Key.ctrl(letter)) : Optional.empty();
    }

    /** Function keys are called the same on both sides. */
    private static Optional<Key.Name> name(KeyType type) {
        Key.Name named = NAMES.get(type);
        if (named != null) {
            return Optional.of(named);
        }
        return List.of(Key.Name.values()).stream()
                .filter(name -> name.name().equals(type.name()))
                .findFirst();
    }

    /** What the decoder reads from: never blocks, never ends, has what was offered last. */
    private static final class Sequence extends Reader {
        private String rest = "";

        void offer(String sequence) {
            rest = sequence;
        }

        @Override
        public boolean ready() {
            return !rest.isEmpty();
        }

        @Override
        public int read(char[] target, int from, int length) {
            int count = Math.min(length, rest.length());
            rest.getChars(0, count, target, from);
            rest = rest.substring(count);
            return count;
        }

        @Override
        public void close() {}
    }
}
