// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.model.Kind;

/** Finds a kind in typed text: large letters or small, hyphens or not, one or many, a class or division after it. */
final class Names {
    private static final List<String> GROUP_WORDS = List.of("", "division", "div", "class");

    private final List<KindEntry> kinds;
    private final List<GroupEntry> groups;

    Names(List<KindEntry> kinds, List<GroupEntry> groups) {
        this.kinds = kinds;
        this.groups = groups;
    }

    /** The kind meant; empty when none has that name, or it has no such class. */
    Optional<Kind> find(String typed) {
        String words = words(typed);
        Optional<Kind> found = Optional.empty();
        int longest = 0;
        for (KindEntry entry : kinds) {
            for (String name : names(entry)) {
                if (name.length() > longest && begins(words, name)) {
                    longest = name.length();
                    found = withGroup(entry.kind(), words.substring(longest));
                }
            }
        }
        return found;
    }

    private static List<String> names(KindEntry entry) {
        List<String> names = new ArrayList<>();
        names.add(words(entry.kind().name()));
        names.add(words(entry.plural()));
        for (String other : entry.otherNames()) {
            names.add(words(other));
        }
        return names;
    }

    private static boolean begins(String words, String name) {
        return words.startsWith(name) && (words.length() == name.length() || words.charAt(name.length()) == ' ');
    }

    private Optional<Kind> withGroup(Kind kind, String rest) {
        String group = letters(rest);
        if (group.isEmpty()) {
            return Optional.of(kind);
        }
        for (GroupEntry entry : groups) {
            if (entry.kind().name().equals(kind.name()) && isMeant(entry, group)) {
                return Optional.of(entry.kind());
            }
        }
        return Optional.empty();
    }

    private static boolean isMeant(GroupEntry entry, String group) {
        String key = letters(entry.kind().group());
        for (String word : GROUP_WORDS) {
            if (group.equals(word + key)) {
                return true;
            }
        }
        return group.equals(letters(entry.name()));
    }

    /** Small letters and digits, with one blank where anything else stood between them. */
    private static String words(String text) {
        var words = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetterOrDigit(text.charAt(i))) {
                if (gap && !words.isEmpty()) {
                    words.append(' ');
                }
                words.append(text.charAt(i));
                gap = false;
            } else {
                gap = true;
            }
        }
        return words.toString().toLowerCase(Locale.ROOT);
    }

    private static String letters(String text) {
        return words(text).replace(" ", "");
    }
}
