// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

/** The first letter of some words, made large or small; the rest stays. */
public final class Initial {
    private Initial() {}

    public static String large(String words) {
        return with(words, words.isEmpty() ? 0 : Character.toUpperCase(words.codePointAt(0)));
    }

    public static String small(String words) {
        return with(words, words.isEmpty() ? 0 : Character.toLowerCase(words.codePointAt(0)));
    }

    private static String with(String words, int first) {
        return words.isEmpty() ? words : Character.toString(first) + words.substring(words.offsetByCodePoints(0, 1));
    }
}
