// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Locale;
import java.util.regex.Pattern;

/** Labels as they are typed and as they are kept. */
final class PotLabels {
    private static final Pattern USUAL = Pattern.compile("[A-Za-z]{1,3}\\d{0,4}");

    private PotLabels() {}

    /** A letter and a number get their capital; any other label stays as it was typed. */
    static String tidy(String typed) {
        return USUAL.matcher(typed).matches() ? typed.toUpperCase(Locale.ROOT) : typed;
    }
}
