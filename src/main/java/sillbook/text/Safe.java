// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.util.Locale;

/**
 * The one gate between text and terminals: what comes out holds no control, no direction override, no line separator and no
 * combining sequence, and each of its characters stands in one or two columns (CWE-150: escape sequences in data must stay text).
 */
public final class Safe {
    private static final int FIRST_REGIONAL_INDICATOR = 0x1F1E6;
    private static final int LAST_REGIONAL_INDICATOR = 0x1F1FF;
    private static final int FIRST_TAG = 0xE0000;
    private static final int LAST_TAG = 0xE0FFF;
    private static final int SOFT_HYPHEN = 0xAD;

    private Safe() {}

    /**
     * The text composed (NFC) and made harmless: tabs and line ends become one space; other controls are shown as {@code ^[},
     * invisible and direction characters as {@code <U+202E>}; of a cluster that stays longer than one character its base remains;
     * the letters of a flag remain as letters.
     */
    public static String text(String raw) {
        return isPlain(raw) ? raw : Slow.text(raw);
    }

    /** Whether every character is one this gate lets through as it is; covers letters of Latin scripts and the program's signs. */
    private static boolean isPlain(String raw) {
        for (int i = 0; i < raw.length(); i++) {
            if (!isPlain(raw.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isPlain(char c) {
        if (c < 0x300) {
            return isIn(c, ' ', '~') || (c >= 0xA0 && c != SOFT_HYPHEN);
        }
        return isIn(c, 0x23A0, 0x28FF) || c == 0x22C5 || isIn(c, 0x2010, 0x2027) || isIn(c, 0x2030, 0x205E);
    }

    private static boolean isIn(int codePoint, int first, int last) {
        return codePoint >= first && codePoint <= last;
    }

    /** What {@link #isPlain} does not let through. */
    private static final class Slow {
        private Slow() {}

        /** Until nothing changes: what was parted by a dropped character may join into one cluster. */
        static String text(String raw) {
            StringBuilder safe = new StringBuilder();
            Clusters.of(raw).forEach(cluster -> appendCluster(cluster, safe));
            return safe.toString().equals(raw) ? raw : text(safe.toString());
        }

        private static void appendCluster(String cluster, StringBuilder safe) {
            if (isRegionalIndicator(cluster.codePointAt(0))) {
                cluster.codePoints().filter(Slow::isRegionalIndicator).forEach(c -> safe.append(letterOf(c)));
            } else {
                appendBase(cluster.codePointAt(0), safe);
            }
        }

        private static void appendBase(int codePoint, StringBuilder safe) {
            if (codePoint == '\t' || codePoint == '\n' || codePoint == '\r') {
                safe.append(' ');
            } else if (codePoint < 0x20 || codePoint == 0x7F) {
                safe.append('^').append((char) (codePoint ^ 0x40));
            } else if (isInvisible(codePoint)) {
                appendNumber(codePoint, safe);
            } else if (codePoint != SOFT_HYPHEN) {
                safe.appendCodePoint(codePoint);
            }
        }

        private static void appendNumber(int codePoint, StringBuilder safe) {
            String digits = Integer.toHexString(codePoint).toUpperCase(Locale.ROOT);
            safe.append("<U+")
                    .append("0".repeat(Math.max(0, 4 - digits.length())))
                    .append(digits)
                    .append('>');
        }

        private static boolean isInvisible(int codePoint) {
            if (codePoint == SOFT_HYPHEN) {
                return false;
            }
            boolean noCharacter = (codePoint & 0xFFFE) == 0xFFFE || isIn(codePoint, FIRST_TAG, LAST_TAG);
            return noCharacter || Width.of(codePoint) == 0 || isInvisibleType(Character.getType(codePoint));
        }

        private static boolean isInvisibleType(int type) {
            return switch (type) {
                case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                    true;
                default -> false;
            };
        }

        private static boolean isRegionalIndicator(int codePoint) {
            return isIn(codePoint, FIRST_REGIONAL_INDICATOR, LAST_REGIONAL_INDICATOR);
        }

        private static char letterOf(int regionalIndicator) {
            return (char) ('A' + regionalIndicator - FIRST_REGIONAL_INDICATOR);
        }
    }
}
