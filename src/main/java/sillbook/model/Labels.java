// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Labels of pots: {@code T3} is the letter of its kind and a number. */
public final class Labels {
    private Labels() {}

    /** The letters a label begins with. */
    public static String letters(String label) {
        int end = 0;
        while (end < label.length() && !Character.isDigit(label.charAt(end))) {
            end++;
        }
        return label.substring(0, end);
    }

    /** The number a label ends with; 0 when it has none that a label could have. */
    public static int number(String label) {
        String digits = label.substring(letters(label).length());
        boolean plain =
                !digits.isEmpty() && digits.length() <= 6 && digits.chars().allMatch(Character::isDigit);
        return plain ? Integer.parseInt(digits) : 0;
    }

    /** So many labels with this letter, from the first number on that no label in use has passed. */
    public static List<String> nextFree(String letters, int howMany, Collection<String> inUse) {
        int highest = inUse.stream()
                .filter(label -> letters(label).equalsIgnoreCase(letters))
                .mapToInt(Labels::number)
                .max()
                .orElse(0);
        return from(letters.toUpperCase(Locale.ROOT), highest + 1, howMany);
    }

    /** So many labels in a row, beginning with this one. */
    public static List<String> from(String first, int howMany) {
        if (howMany == 1) {
            return List.of(first);
        }
        return from(letters(first), Math.max(1, number(first)), howMany);
    }

    private static List<String> from(String letters, int first, int howMany) {
        List<String> labels = new ArrayList<>(howMany);
        for (int number = first; number < first + howMany; number++) {
            labels.add(letters + number);
        }
        return labels;
    }

    /** Labels as they are said: runs drawn together, {@code T1-T6 T9}. */
    public static String say(Collection<String> labels) {
        List<String> said = new ArrayList<>();
        List<String> sorted = new ArrayList<>(Set.copyOf(labels));
        sorted.sort((one, other) -> {
            int byLetters = letters(one).compareTo(letters(other));
            int byNumber = Integer.compare(number(one), number(other));
            return byLetters != 0 ? byLetters : byNumber != 0 ? byNumber : one.compareTo(other);
        });
        for (int at = 0; at < sorted.size(); ) {
            int end = endOfRun(sorted, at);
            String first = sorted.get(at);
            said.add(end - at > 1 ? first + "-" + sorted.get(end - 1) : first);
            at = end;
        }
        return String.join(" ", said);
    }

    private static int endOfRun(List<String> sorted, int start) {
        int end = start + 1;
        while (end < sorted.size() && follows(sorted.get(end - 1), sorted.get(end))) {
            end++;
        }
        return end;
    }

    private static boolean follows(String one, String next) {
        int number = number(one);
        boolean isPlain = number > 0 && one.equals(letters(one) + number);
        return isPlain && next.equals(letters(one) + (number + 1));
    }
}
