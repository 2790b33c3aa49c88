// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.ColourDepth;

/** What the environment says of the terminal: how many colours, and which characters. */
public record Surroundings(ColourDepth depth, Alphabet alphabet) {
    private static final List<String> LOCALE_FIRST_TO_LAST = List.of("LC_ALL", "LC_CTYPE", "LANG");

    /**
     * Reads the environment variables of this program.
     *
     * @param isTerminal whether output goes to a terminal at all
     */
    public static Surroundings of(Map<String, String> environment, ColourWish wish, boolean isTerminal) {
        return new Surroundings(depth(environment, wish, isTerminal), alphabet(environment));
    }

    /**
     * The first that speaks decides: the switch; {@code NO_COLOR} (no-color.org: present and not empty); {@code CLICOLOR_FORCE} and
     * {@code FORCE_COLOR}, unless empty or 0; a terminal that is none, or is {@code dumb}; then what it can show.
     */
    private static ColourDepth depth(Map<String, String> environment, ColourWish wish, boolean isTerminal) {
        if (wish != ColourWish.AUTO) {
            return wish == ColourWish.NEVER ? ColourDepth.NONE : shown(environment);
        }
        if (!value(environment, "NO_COLOR").isEmpty()) {
            return ColourDepth.NONE;
        }
        boolean forced = isOn(environment, "CLICOLOR_FORCE") || isOn(environment, "FORCE_COLOR");
        boolean able = isTerminal && !value(environment, "TERM").equals("dumb");
        return forced || able ? shown(environment) : ColourDepth.NONE;
    }

    private static ColourDepth shown(Map<String, String> environment) {
        String direct = value(environment, "COLORTERM");
        if (direct.equals("truecolor") || direct.equals("24bit")) {
            return ColourDepth.DIRECT_24_BIT;
        }
        boolean many = value(environment, "TERM").endsWith("-256color");
        return many ? ColourDepth.INDEXED_256 : ColourDepth.SIXTEEN;
    }

    /** The first locale variable that is set decides; without UTF-8 in it only ASCII is safe. */
    private static Alphabet alphabet(Map<String, String> environment) {
        String locale = LOCALE_FIRST_TO_LAST.stream()
                .map(name -> value(environment, name))
                .filter(value -> !value.isEmpty())
                .findFirst()
                .orElse("");
        String charset = locale.toLowerCase(Locale.ROOT).replace("-", "");
        return charset.contains("utf8") ? Alphabet.UNICODE : Alphabet.ASCII;
    }

    private static boolean isOn(Map<String, String> environment, String name) {
        String value = value(environment, name);
        return !value.isEmpty() && !value.equals("0");
    }

    private static String value(Map<String, String> environment, String name) {
        return environment.getOrDefault(name, "");
    }
}
