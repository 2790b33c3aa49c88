// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Style;

/**
 * The paints of one palette, numbered in the order they are met: numbers are what thousands of cells a frame are compared by. Styles that are
 * painted the same have one number.
 */
final class Paints {
    /** As a terminal paints after it was told to forget all paint. */
    static final int PLAIN = 0;

    private static final int STYLES_A_ROLE = 8;
    private static final int MOST = Role.values().length * STYLES_A_ROLE;

    private final Palette palette;
    private final Map<Role, int[]> numbers = new EnumMap<>(Role.class);
    private final List<Rendition> renditions = new ArrayList<>();
    private final List<String> wholes = new ArrayList<>();
    /** Sequences already made, by number from and number to. */
    private final byte[][][] changes = new byte[MOST][MOST][];

    Paints(Palette palette) {
        this.palette = palette;
        number(Style.INK);
    }

    int number(Style style) {
        int[] ofRole = numbers.computeIfAbsent(style.role(), role -> new int[STYLES_A_ROLE]);
        int at = (style.bold() ? 1 : 0) | (style.underlined() ? 2 : 0) | (style.washed() ? 4 : 0);
        if (ofRole[at] == 0) {
            ofRole[at] = 1 + numberOf(Rendition.of(palette.paint(style)));
        }
        return ofRole[at] - 1;
    }

    /** The numbers of all cells, row by row. */
    int[] numbers(Cells cells) {
        int columns = cells.size().columns();
        int[] all = new int[columns * cells.size().rows()];
        for (int i = 0; i < all.length; i++) {
            all[i] = number(cells.style(i % columns, i / columns));
        }
        return all;
    }

    /** Whether a blank looks the same in both. */
    boolean leaveBlanksAlike(int one, int other) {
        return renditions.get(one).leavesBlanksAs(renditions.get(other));
    }

    /** Whether erasing leaves what a blank in this paint would. */
    boolean isBare(int number) {
        return leaveBlanksAlike(number, PLAIN);
    }

    /** The sequence that brings a terminal from one paint to another. */
    byte[] change(int from, int to) {
        byte @Nullable [] known = changes[from][to];
        if (known == null) {
            known = renditions.get(to).after(renditions.get(from)).getBytes(StandardCharsets.US_ASCII);
            changes[from][to] = known;
        }
        return known;
    }

    /** Found again by the whole sequence, which is what makes two paints the same. */
    private int numberOf(Rendition rendition) {
        String whole = rendition.whole();
        int known = wholes.indexOf(whole);
        if (known >= 0) {
            return known;
        }
        renditions.add(rendition);
        wholes.add(whole);
        return wholes.size() - 1;
    }
}
