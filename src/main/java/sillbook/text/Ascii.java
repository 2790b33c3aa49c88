// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.text.Normalizer;
import java.util.Locale;

/** Text for a terminal that shows nothing but ASCII: each character by one of its kind, so that columns stay where they are. */
public final class Ascii {
    private static final char NOT_KNOWN = '?';

    private Ascii() {}

    /** Safe text with each column kept: accents fall away, quotation marks and dashes become plain, what is left becomes {@code ?}. */
    public static String of(String text) {
        String safe = Safe.text(text);
        if (safe.chars().allMatch(c -> c < 0x7F)) {
            return safe;
        }
        StringBuilder ascii = new StringBuilder();
        safe.codePoints().forEach(c -> ascii.append(Character.toString(of(c)).repeat(Width.of(c))));
        return ascii.toString();
    }

    /** The ASCII character nearest to this one. */
    public static char of(int codePoint) {
        return codePoint < 0x7F ? (char) codePoint : punctuation(codePoint);
    }

    private static char punctuation(int codePoint) {
        return switch (codePoint) {
            case '‘', '’', '‚', '′' -> '\'';
            case '“', '”', '„', '″' -> '"';
            case '‐', '‑', '‒', '–', '—', '−' -> '-';
            case '«', '‹' -> '<';
            case '»', '›' -> '>';
            case '•', '·' -> '*';
            case '×' -> 'x';
            case '°' -> 'o';
            case '\u00A0', '\u202F', '\u3000' -> ' ';
            default -> sign(codePoint);
        };
    }

    /** The program's own signs, where one stands in a sentence or a drawing without a closer rule. */
    private static char sign(int codePoint) {
        return switch (codePoint) {
            case '⎽', '⣀' -> '_';
            case '⎼', '⠤' -> '-';
            case '⎻', '⠒', '▪' -> '=';
            case '⎺', '⠉', '▫' -> '#';
            case '✿', '❀' -> '*';
            case '◌', '◉', '◦' -> 'o';
            case '▾', '╎', '⎢' -> '|';
            case '⎡', '⎣' -> '+';
            case '⋅' -> '.';
            case '✓' -> 'v';
            case '▴' -> '^';
            case '❆' -> 'f';
            case '☼' -> 'w';
            case '╷' -> ',';
            case '╵' -> '\'';
            case '▸' -> '>';
            case '◂' -> '<';
            default -> letter(codePoint);
        };
    }

    /** The first letter it is written with elsewhere ({@code É} as {@code E}, {@code ß} as {@code s}), in its own case. */
    private static char letter(int codePoint) {
        String folded = Fold.of(Normalizer.normalize(Character.toString(codePoint), Normalizer.Form.NFKD));
        if (folded.isEmpty() || folded.charAt(0) <= ' ' || folded.charAt(0) >= 0x7F) {
            return NOT_KNOWN;
        }
        String cased = Character.isUpperCase(codePoint) ? folded.toUpperCase(Locale.ROOT) : folded;
        return cased.charAt(0);
    }
}
