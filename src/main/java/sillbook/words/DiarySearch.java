// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Day;
import sillbook.text.Fold;
import sillbook.text.Span;

/**
 * What is looked for in the diary.
 *
 * @param wanted words that must be there, folded
 * @param unwanted words that must not, folded
 */
public record DiarySearch(List<String> wanted, List<String> unwanted, Optional<LocalDate> since) {
    private static final Pattern LABEL = Pattern.compile("[a-z]{1,3}\\d{1,4}");
    private static final int MOST_WORDS_OF_A_DAY = 3;

    public DiarySearch {
        wanted = List.copyOf(wanted);
        unwanted = List.copyOf(unwanted);
    }

    /**
     * Reads a search; what is no day after {@code since} is looked for as words.
     *
     * @param today the day it is asked on
     */
    public static DiarySearch parse(String sought, LocalDate today) {
        List<String> words = Arrays.stream(Fold.of(sought).strip().split("[\\s,]+", -1))
                .filter(word -> !word.isEmpty())
                .toList();
        List<String> wanted = new ArrayList<>();
        List<String> unwanted = new ArrayList<>();
        Optional<LocalDate> since = Optional.empty();
        int at = 0;
        while (at < words.size()) {
            String word = words.get(at);
            Optional<Since> from = word.equals("since") ? since(words, at + 1, today) : Optional.empty();
            if (from.isPresent()) {
                since = Optional.of(from.get().day);
            } else {
                boolean isUnwanted = word.length() > 1 && word.startsWith("-");
                (isUnwanted ? unwanted : wanted).add(isUnwanted ? word.substring(1) : word);
            }
            at = from.map(Since::end).orElse(at + 1);
        }
        return new DiarySearch(wanted, unwanted, since);
    }

    /** A day, and where the words after it begin. */
    private record Since(LocalDate day, int end) {}

    private static Optional<Since> since(List<String> words, int from, LocalDate today) {
        int most = Math.min(words.size(), from + MOST_WORDS_OF_A_DAY);
        for (int end = most; end > from; end--) {
            Optional<Day> day = DayReader.back(today)
                    .tryParse(String.join(" ", words.subList(from, end)))
                    .flatMap(Heard::value);
            if (day.isPresent()) {
                return Optional.of(new Since(day.get().earliest(), end));
            }
        }
        return Optional.empty();
    }

    /** Whether an entry has all that is wanted and nothing that is not. */
    public boolean finds(DiaryEntry entry) {
        boolean early = since.filter(day -> entry.day().latest().isBefore(day)).isPresent();
        String text = Fold.of(entry.says()) + " " + entry.found() + " ";
        return !early
                && wanted.stream().allMatch(word -> has(text, word))
                && unwanted.stream().noneMatch(word -> has(text, word));
    }

    /** Where the words looked for stand in a text as it is shown; empty where it was found by other words. */
    public List<Span> in(String shown) {
        return wanted.stream().flatMap(word -> in(shown, word).stream()).toList();
    }

    private static List<Span> in(String shown, String word) {
        if (!LABEL.matcher(word).matches()) {
            return Fold.find(shown, word);
        }
        return Fold.find(" " + shown + " ", " " + word + " ").stream()
                .map(padded -> new Span(padded.fromInclusive(), padded.toExclusive() - 2))
                .toList();
    }

    private static boolean has(String text, String word) {
        return LABEL.matcher(word).matches() ? text.contains(" " + word + " ") : text.contains(word);
    }
}
