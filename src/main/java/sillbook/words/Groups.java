// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The groups of a text that matched a pattern as a whole. A group that is not there is an empty text. */
public final class Groups {
    private final Matcher matcher;

    private Groups(Matcher matcher) {
        this.matcher = matcher;
    }

    /** Empty when the whole text does not match. */
    public static Optional<Groups> of(Pattern pattern, CharSequence text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.matches() ? Optional.of(new Groups(matcher)) : Optional.empty();
    }

    public String text(int group) {
        return Objects.requireNonNullElse(matcher.group(group), "");
    }

    /** A group that holds digits only, few enough for an {@code int}. */
    public int number(int group) {
        return Integer.parseInt(text(group));
    }

    public boolean has(int group) {
        return !text(group).isEmpty();
    }
}
