// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Text cut, padded and wrapped to columns. Takes any text; gives text that is safe to show ({@link Safe}). */
public final class Columns {
    /** What stands at the end of a text that was cut. */
    public static final String CUT = "..";

    /** Spaces, but not the one before a sign in brackets. */
    private static final Pattern BETWEEN_WORDS = Pattern.compile(" (?!\\([^ )]\\))");

    private Columns() {}

    /** The text if it fits, else as much of it as fits before {@link #CUT}. */
    public static String fit(String text, int columns) {
        String safe = Safe.text(text);
        if (Width.of(safe) <= columns) {
            return safe;
        }
        int forText = columns - CUT.length();
        return forText <= 0 ? CUT.substring(0, Math.max(0, columns)) : head(safe, forText) + CUT;
    }

    /** Fitted and flush left: exactly so many columns. */
    public static String left(String text, int columns) {
        String fitted = fit(text, columns);
        return fitted + spaces(columns - Width.of(fitted));
    }

    /** Fitted and flush right: exactly so many columns. */
    public static String right(String text, int columns) {
        String fitted = fit(text, columns);
        return spaces(columns - Width.of(fitted)) + fitted;
    }

    /** As many whole characters from the front as fit, without a mark of the cut. */
    public static String head(String text, int columns) {
        String safe = Safe.text(text);
        return safe.substring(0, lengthWithin(safe, 0, columns));
    }

    /**
     * Lines of at most so many columns, broken at spaces; a word longer than a line is broken inside. A sign in brackets stays with the word
     * before it. Never empty: no text is one empty line.
     */
    public static List<String> wrap(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text)) {
            if (!line.isEmpty() && Width.of(line.toString()) + 1 + Width.of(word) > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(breakWord(word, columns, lines));
        }
        lines.add(line.toString());
        return List.copyOf(lines);
    }

    private static List<String> words(String text) {
        return Stream.of(BETWEEN_WORDS.split(Safe.text(text), -1))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Puts whole lines of an overlong word into {@code lines} and gives back its rest. */
    private static String breakWord(String word, int columns, List<String> lines) {
        String rest = word;
        while (Width.of(rest) > columns) {
            int cut = Math.max(Character.charCount(rest.codePointAt(0)), lengthWithin(rest, 0, columns));
            if (cut == rest.length()) {
                break;
            }
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        return rest;
    }

    private static int lengthWithin(String safe, int from, int columns) {
        int used = 0;
        int end = from;
        while (end < safe.length()) {
            int codePoint = safe.codePointAt(end);
            used += Width.of(codePoint);
            if (used > columns) {
                break;
            }
            end += Character.charCount(codePoint);
        }
        return end;
    }

    private static String spaces(int count) {
        return " ".repeat(Math.max(0, count));
    }
}
