// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.Optional;
import java.util.stream.Stream;

/** The keys screens speak of most, and all of them by their names. */
public final class Keys {
    public static final Key ENTER = Key.named(Key.Name.ENTER);
    public static final Key ESCAPE = Key.named(Key.Name.ESCAPE);
    public static final Key TAB = Key.named(Key.Name.TAB);
    public static final Key BACKSPACE = Key.named(Key.Name.BACKSPACE);
    public static final Key DELETE = Key.named(Key.Name.DELETE);
    public static final Key UP = Key.named(Key.Name.UP);
    public static final Key DOWN = Key.named(Key.Name.DOWN);
    public static final Key LEFT = Key.named(Key.Name.LEFT);
    public static final Key RIGHT = Key.named(Key.Name.RIGHT);
    public static final Key HOME = Key.named(Key.Name.HOME);
    public static final Key END = Key.named(Key.Name.END);
    public static final Key PAGE_UP = Key.named(Key.Name.PAGE_UP);
    public static final Key PAGE_DOWN = Key.named(Key.Name.PAGE_DOWN);
    public static final Key F1 = Key.named(Key.Name.F1);
    public static final Key F2 = Key.named(Key.Name.F2);
    public static final Key BACK_TAB = new Key.Named(Key.Name.TAB, false, true);
    public static final Key SPACE = Key.of(' ');

    private Keys() {}

    /** The key with this name on the page, as {@link Key#words} gives it; a single character is itself. */
    public static Optional<Key> parse(String words) {
        int[] codePoints = words.codePoints().toArray();
        if (codePoints.length == 1) {
            return Optional.of(Key.of(codePoints[0]));
        }
        return named().filter(key -> key.words().equals(words)).findFirst();
    }

    private static Stream<Key> named() {
        Stream<Key> letters = "abcdefghijklmnopqrstuvwxyz".chars().mapToObj(letter -> Key.ctrl((char) letter));
        Stream<Key> names = Stream.of(Key.Name.values()).flatMap(Keys::variants);
        return Stream.concat(Stream.concat(letters, names), Stream.of(SPACE));
    }

    private static Stream<Key> variants(Key.Name name) {
        return Stream.of(false, true)
                .flatMap(ctrl -> Stream.of(false, true).map(shift -> new Key.Named(name, ctrl, shift)));
    }
}
