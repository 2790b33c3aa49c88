// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.text.Normalizer;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Text as what a person calls characters: extended grapheme clusters (Unicode Standard Annex #29), composed (NFC). */
public final class Clusters {
    private Clusters() {}

    public static List<String> of(String text) {
        boolean single = text.chars().allMatch(c -> c >= ' ' && c < 0x300);
        return single ? text.codePoints().mapToObj(Character::toString).toList() : Slow.of(text);
    }

    /** Apart, so that normalisation and patterns are loaded only for text that needs them. */
    private static final class Slow {
        private static final Pattern CLUSTER = Pattern.compile("\\X");

        private Slow() {}

        static List<String> of(String text) {
            return CLUSTER.matcher(Normalizer.normalize(text, Normalizer.Form.NFC))
                    .results()
                    .map(MatchResult::group)
                    .toList();
        }
    }
}
