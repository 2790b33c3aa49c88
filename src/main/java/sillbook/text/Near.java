// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Which known word was probably meant. */
public final class Near {
    private Near() {}

    /**
     * How many single-letter slips (left out, put in, changed, two swapped) lie between two words, compared folded: the restricted
     * edit distance of Damerau and Levenshtein.
     */
    public static int distance(String one, String other) {
        int[] a = Fold.of(one).codePoints().toArray();
        int[] b = Fold.of(other).codePoints().toArray();
        int[][] slips = new int[a.length + 1][b.length + 1];
        for (int i = 0; i <= a.length; i++) {
            for (int j = 0; j <= b.length; j++) {
                slips[i][j] = i == 0 || j == 0 ? i + j : fewest(slips, a, b, i, j);
            }
        }
        return slips[a.length][b.length];
    }

    /** The nearest candidate within a slip in three letters; on a tie the first. */
    public static Optional<String> closest(String word, Collection<String> candidates) {
        return candidates.stream()
                .filter(candidate -> distance(word, candidate) <= allowed(word))
                .min(Comparator.comparingInt(candidate -> distance(word, candidate)));
    }

    private static int allowed(String word) {
        return Math.max(1, word.codePointCount(0, word.length()) / 3);
    }

    private static int fewest(int[][] slips, int[] a, int[] b, int i, int j) {
        int changed = slips[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        int best = Math.min(changed, 1 + Math.min(slips[i - 1][j], slips[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return swapped ? Math.min(best, slips[i - 2][j - 2] + 1) : best;
    }
}
