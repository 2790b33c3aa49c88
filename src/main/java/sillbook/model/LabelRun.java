// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Labels that follow one another: {@code T1-T6}, {@code t1-6}.
 *
 * @param letters that they all begin with, in small letters
 * @param last not before the first
 */
public record LabelRun(String letters, int first, int last) {
    private static final Pattern WRITTEN = Pattern.compile("([a-z]{1,3})(\\d{1,4})-([a-z]{0,3})(\\d{1,4})");

    /** Empty for what is no run, and for one that runs backwards. */
    public static Optional<LabelRun> parse(String written) {
        Matcher run = WRITTEN.matcher(written.toLowerCase(Locale.ROOT));
        if (!run.matches() || !(run.group(3).isEmpty() || run.group(3).equals(run.group(1)))) {
            return Optional.empty();
        }
        return Optional.of(new LabelRun(run.group(1), Integer.parseInt(run.group(2)), Integer.parseInt(run.group(4))))
                .filter(read -> read.first <= read.last);
    }

    public boolean contains(String label) {
        int number = Labels.number(label);
        return Labels.letters(label).equalsIgnoreCase(letters) && first <= number && number <= last;
    }
}
