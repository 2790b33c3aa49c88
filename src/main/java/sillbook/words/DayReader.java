// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sillbook.model.Day;
import sillbook.text.Fold;

/**
 * Reads a day as people say it, any case, with or without accents.
 *
 * @param today the day it is said on
 * @param looking which way a day is sought when the words leave it open
 */
public record DayReader(LocalDate today, Looking looking) {
    /** Days either way that "about" leaves open. */
    public static final int ABOUT = 3;

    private static final Pattern ABOUT_WORD = Pattern.compile("(?:about|around|abt|ca\\.?|~) ?(.+)");
    private static final Pattern SPACES = Pattern.compile("[\\s,]+");

    /** For what has happened. */
    public static DayReader back(LocalDate today) {
        return new DayReader(today, Looking.BACK);
    }

    /** For what is meant to happen. */
    public static DayReader ahead(LocalDate today) {
        return new DayReader(today, Looking.AHEAD);
    }

    /** The day meant, or a sentence that says what a day looks like. */
    public Heard<Day> parse(String text) {
        return tryParse(text).orElseGet(() -> noDay(text));
    }

    /** The same for a day that has to be certain. */
    public Heard<LocalDate> parseExact(String text) {
        return parse(text)
                .then(day -> day.isExact()
                        ? Heard.as(day.likely())
                        : Heard.not(
                                "one day only",
                                "'" + text.strip() + "' is more than one day. Write one, as 14 nov or +10."));
    }

    /**
     * The day meant.
     *
     * @return empty when it does not look like a day at all; a complaint when it does, but is none
     */
    public Optional<Heard<Day>> tryParse(String text) {
        String said = SPACES.matcher(Fold.of(text)).replaceAll(" ").strip();
        Matcher about = ABOUT_WORD.matcher(said);
        if (about.matches()) {
            return DayForm.read(about.group(1), this)
                    .map(heard -> heard.map(day -> day.isExact() ? Day.about(day.likely(), ABOUT) : day));
        }
        return DayForm.read(said, this);
    }

    private static Heard<Day> noDay(String text) {
        return Heard.not(
                "a day, as 14 nov or +10",
                "'" + text.strip() + "' is no day. Write it as today, fri, +10, 14 nov or 2026-11-14.");
    }
}
