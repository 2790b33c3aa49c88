// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sillbook.text.Fold;

/**
 * A line taken apart into words. A comma between two figures of one number is part of it; every other comma, colon,
 * semicolon and bracket parts the words on its sides. What stands in quotes is one word.
 */
record Written(String line, List<Word> words) {
    private static final Pattern WORD = Pattern.compile("(?<mark>[,;:()])"
            + "|(?<=^|[\\s,;:(])['‘](?<single>[^'’]*(?:['’](?![\\s,;:)]|$)[^'’]*)*)(?:['’]|$)"
            + "|(?<=^|[\\s,;:(])[\"“](?<double>[^\"”]*)(?:[\"”]|$)"
            + "|(?<number>[+-]?\\d+,\\d{1,2}(?=[\\s;:()]|,\\s|,?$))"
            + "|(?<plain>[^\\s,;:()]+)");

    Written {
        words = List.copyOf(words);
    }

    /** What a word is. */
    enum Sort {
        PLAIN,
        QUOTED,
        MARK
    }

    /**
     * One word or mark.
     *
     * @param text without its quotes
     * @param at where it stands, quotes included
     */
    record Word(String text, Sort sort, Stretch at) {
        boolean isMark(String marks) {
            return sort == Sort.MARK && marks.contains(text);
        }
    }

    static Written of(String line) {
        List<Word> words = new ArrayList<>();
        Matcher found = WORD.matcher(line);
        while (found.find()) {
            words.add(word(found));
        }
        return new Written(line, words);
    }

    private static Word word(Matcher found) {
        Stretch at = new Stretch(found.start(), found.end());
        if (found.group("mark") != null) {
            return new Word(found.group(), Sort.MARK, at);
        }
        for (String quotes : List.of("single", "double")) {
            String quoted = found.group(quotes);
            if (quoted != null) {
                return new Word(quoted, Sort.QUOTED, at);
            }
        }
        return new Word(found.group(), Sort.PLAIN, at);
    }

    int size() {
        return words.size();
    }

    boolean isMark(int index, String marks) {
        return index >= 0 && index < size() && words.get(index).isMark(marks);
    }

    boolean isQuoted(int index) {
        return index < size() && words.get(index).sort() == Sort.QUOTED;
    }

    /** Where the phrase that has this word ends: at the next mark, or with the line. */
    int phraseEnd(int from) {
        int end = from;
        while (end < size() && words.get(end).sort() != Sort.MARK) {
            end++;
        }
        return end;
    }

    /** Whether a phrase begins here. */
    boolean isPhraseStart(int index) {
        return index == 0 || words.get(index - 1).sort() == Sort.MARK;
    }

    /** The words, one blank between them, without quotes. */
    String text(int from, int end) {
        if (end - from == 1) {
            return words.get(from).text();
        }
        return words.subList(from, end).stream().map(Word::text).collect(Collectors.joining(" "));
    }

    /** The same in small letters without accents. */
    String folded(int from, int end) {
        return Fold.of(text(from, end));
    }

    /** The line from this word on, as it was written. */
    String rest(int from) {
        return from < size()
                ? line.substring(words.get(from).at().fromInclusive()).strip()
                : "";
    }

    /** Where these words stand in the line; there must be at least one. */
    Stretch stretch(int from, int end) {
        return new Stretch(
                words.get(from).at().fromInclusive(), words.get(end - 1).at().toExclusive());
    }
}
