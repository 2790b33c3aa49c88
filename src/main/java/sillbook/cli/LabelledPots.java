// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sillbook.model.Id;
import sillbook.model.Labels;
import sillbook.model.Pot;

/**
 * Pots by labels and runs of labels, as they are given to a command: {@code T4}, {@code T1-T6}, {@code t1-6}.
 *
 * @param pots those of the season, by label
 * @param season its name, to say where none was found
 */
record LabelledPots(List<Pot> pots, String season) {
    private static final Pattern RUN = Pattern.compile("([a-z]{1,3})(\\d{1,4})-([a-z]{0,3})(\\d{1,4})");

    /**
     * All that were meant, each once.
     *
     * @throws CouldNot when one of the labels names no pot
     */
    List<Id<Pot>> find(List<String> labels) {
        Set<Id<Pot>> found = new LinkedHashSet<>();
        labels.forEach(label -> found.addAll(find(label)));
        return List.copyOf(found);
    }

    private List<Id<Pot>> find(String label) {
        List<Id<Pot>> found = new ArrayList<>();
        Predicate<Pot> meant = meant(label.toLowerCase(Locale.ROOT));
        pots.stream().filter(meant).map(Pot::id).forEach(found::add);
        if (found.isEmpty()) {
            throw new CouldNot(
                    "There is no pot '" + label + "' in season " + season + ". 'sillbook pots' lists those there are.");
        }
        return found;
    }

    private static Predicate<Pot> meant(String label) {
        Matcher run = RUN.matcher(label);
        if (!run.matches() || !(run.group(3).isEmpty() || run.group(3).equals(run.group(1)))) {
            return pot -> pot.label().equalsIgnoreCase(label);
        }
        int first = Integer.parseInt(run.group(2));
        int last = Integer.parseInt(run.group(4));
        return pot -> Labels.letters(pot.label()).equalsIgnoreCase(run.group(1))
                && first <= Labels.number(pot.label())
                && Labels.number(pot.label()) <= last;
    }
}
