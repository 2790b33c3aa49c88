// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import java.util.Arrays;

/**
 * The one owner of display width, in terminal columns.
 *
 * <p>Wide are the characters whose East_Asian_Width is W or F (Unicode Standard Annex #11; table from the Unicode Character
 * Database 14.0, ranges joined over unassigned code points so that later emoji fall on the right side). Ambiguous ones count one:
 * the program's own signs avoid them.
 */
public final class Width {
    private static final int[] WIDE = {
        0x1100, 0x115F, 0x231A, 0x231B, 0x2329, 0x232A, 0x23E9, 0x23EC, 0x23F0, 0x23F0, 0x23F3, 0x23F3, 0x25FD, 0x25FE,
        0x2614, 0x2615, 0x2648, 0x2653, 0x267F, 0x267F, 0x2693, 0x2693, 0x26A1, 0x26A1, 0x26AA, 0x26AB, 0x26BD, 0x26BE,
        0x26C4, 0x26C5, 0x26CE, 0x26CE, 0x26D4, 0x26D4, 0x26EA, 0x26EA, 0x26F2, 0x26F3, 0x26F5, 0x26F5, 0x26FA, 0x26FA,
        0x26FD, 0x26FD, 0x2705, 0x2705, 0x270A, 0x270B, 0x2728, 0x2728, 0x274C, 0x274C, 0x274E, 0x274E, 0x2753, 0x2755,
        0x2757, 0x2757, 0x2795, 0x2797, 0x27B0, 0x27B0, 0x27BF, 0x27BF, 0x2B1B, 0x2B1C, 0x2B50, 0x2B50, 0x2B55, 0x2B55,
        0x2E80, 0x303E, 0x3041, 0x3247, 0x3250, 0x4DBF, 0x4E00, 0xA4C6, 0xA960, 0xA97C, 0xAC00, 0xD7A3, 0xF900, 0xFAFF,
        0xFE10, 0xFE19, 0xFE30, 0xFE6B, 0xFF01, 0xFF60, 0xFFE0, 0xFFE6, 0x16FE0, 0x1B2FB, 0x1F004, 0x1F004, 0x1F0CF,
        0x1F0CF, 0x1F18E, 0x1F18E, 0x1F191, 0x1F19A, 0x1F200, 0x1F320, 0x1F32D, 0x1F335, 0x1F337, 0x1F37C, 0x1F37E,
        0x1F393, 0x1F3A0, 0x1F3CA, 0x1F3CF, 0x1F3D3, 0x1F3E0, 0x1F3F0, 0x1F3F4, 0x1F3F4, 0x1F3F8, 0x1F43E, 0x1F440,
        0x1F440, 0x1F442, 0x1F4FC, 0x1F4FF, 0x1F53D, 0x1F54B, 0x1F54E, 0x1F550, 0x1F567, 0x1F57A, 0x1F57A, 0x1F595,
        0x1F596, 0x1F5A4, 0x1F5A4, 0x1F5FB, 0x1F64F, 0x1F680, 0x1F6C5, 0x1F6CC, 0x1F6CC, 0x1F6D0, 0x1F6D2, 0x1F6D5,
        0x1F6DF, 0x1F6EB, 0x1F6EC, 0x1F6F4, 0x1F6FC, 0x1F7E0, 0x1F7F0, 0x1F90C, 0x1F93A, 0x1F93C, 0x1F945, 0x1F947,
        0x1F9FF, 0x1FA70, 0x1FAFF, 0x20000, 0x3FFFD,
    };
    private static final int FIRST_MARK = 0x300;
    private static final int FIRST_EMOJI = 0x1F000;
    private static final int FIRST_IDEOGRAPH_PLANE = 0x20000;

    private Width() {}

    /** Columns of one character: 0 for combining and format characters and joining jamo, 2 for wide ones, else 1. */
    public static int of(int codePoint) {
        if (codePoint < FIRST_MARK) {
            return 1;
        }
        if (isJoining(codePoint)) {
            return 0;
        }
        return isWide(codePoint) ? 2 : 1;
    }

    /** Columns of a text as it is shown, which is the width of {@link Safe#text}. */
    public static int of(String text) {
        String safe = Safe.text(text);
        int columns = 0;
        for (int i = 0; i < safe.length(); i += Character.charCount(safe.codePointAt(i))) {
            columns += of(safe.codePointAt(i));
        }
        return columns;
    }

    /** Whether terminals disagree on the width of this character, as they do on emoji; what follows it is best placed anew. */
    public static boolean isDoubtful(int codePoint) {
        boolean symbol = codePoint >= 0x2600 && codePoint <= 0x2B55;
        boolean emoji = codePoint >= FIRST_EMOJI && codePoint < FIRST_IDEOGRAPH_PLANE;
        return emoji || (symbol && isWide(codePoint));
    }

    private static boolean isJoining(int codePoint) {
        int type = Character.getType(codePoint);
        boolean mark =
                type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT;
        boolean jamo = (codePoint >= 0x1160 && codePoint <= 0x11FF) || (codePoint >= 0xD7B0 && codePoint <= 0xD7FF);
        return mark || jamo;
    }

    /** In a table of pairs an odd insertion point lies inside a range; an exact hit is one of its ends. */
    private static boolean isWide(int codePoint) {
        int found = Arrays.binarySearch(WIDE, codePoint);
        return found >= 0 || (-found - 1) % 2 == 1;
    }
}
