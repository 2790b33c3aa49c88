// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/**
 * From what a style says to the colours that say it, for one background and one number of colours. Contrast is at least 4.5 to 1 on the
 * background it is for (WCAG 2 success criterion 1.4.3); the test of this class reckons it.
 */
public final class Palette {
    private final Ground ground;
    private final ColourDepth depth;

    private Palette(Ground ground, ColourDepth depth) {
        this.ground = ground;
        this.depth = depth;
    }

    /** Where the background is not known, fewer than 24 bits give weight only: their colours are not ours to choose. */
    public static Palette of(Ground ground, ColourDepth depth) {
        boolean fixed = depth == ColourDepth.DIRECT_24_BIT;
        boolean none = ground == Ground.NONE || (ground == Ground.EITHER && !fixed);
        return new Palette(ground, none ? ColourDepth.NONE : depth);
    }

    public Paint paint(Style style) {
        Colour foreground = foreground(style.role());
        boolean dim = style.role() == Role.PENCIL && foreground == Colour.OWN && !style.bold();
        return new Paint(foreground, style.washed() ? wash() : Colour.OWN, style.bold(), dim, style.underlined());
    }

    private Colour foreground(Role role) {
        Tones tones = Tones.of(role);
        return switch (depth) {
            case NONE -> Colour.OWN;
            case SIXTEEN -> tones.basic(ground);
            case INDEXED_256 -> tones.indexed(ground);
            case DIRECT_24_BIT -> tones.direct(ground);
        };
    }

    private Colour wash() {
        boolean dark = ground == Ground.DARK;
        if (ground == Ground.EITHER) {
            return Colour.OWN;
        }
        return switch (depth) {
            case NONE, SIXTEEN -> Colour.OWN;
            case INDEXED_256 -> new Colour.Indexed(dark ? 235 : 255);
            case DIRECT_24_BIT -> new Colour.Direct(dark ? 0x2C2A26 : 0xEFEBE2);
        };
    }

    /** The colours of one role; a number of -1 is the terminal's own. */
    private record Tones(
            int darkDirect,
            int darkIndexed,
            int darkBasic,
            int lightDirect,
            int lightIndexed,
            int lightBasic,
            int eitherDirect) {
        static Tones of(Role role) {
            return switch (role) {
                case INK -> new Tones(-1, -1, -1, -1, -1, -1, -1);
                case PENCIL -> new Tones(0xA8A39A, 248, -1, 0x5F5B55, 240, -1, 0x767676);
                case FROST -> new Tones(0x6CA6F0, 75, 14, 0x1B4AA3, 19, 4, 0x2F74D0);
                case LEAF -> new Tones(0x86DDA8, 115, 10, 0x0B735A, 23, -1, 0x008560);
                case LAMP -> new Tones(0xF2D24A, 221, 11, 0x8A5B00, 94, -1, 0x9A6D00);
                case PETAL -> new Tones(0xD48BB5, 175, 13, 0x742C74, 90, 5, 0xB0559A);
                case RUST -> new Tones(0xE4703F, 202, 9, 0x8A1C12, 88, 1, 0xCC4B2C);
            };
        }

        Colour basic(Ground ground) {
            int number = ground == Ground.LIGHT ? lightBasic : darkBasic;
            return number < 0 ? Colour.OWN : new Colour.Basic(number);
        }

        Colour indexed(Ground ground) {
            int number = ground == Ground.LIGHT ? lightIndexed : darkIndexed;
            return number < 0 ? Colour.OWN : new Colour.Indexed(number);
        }

        Colour direct(Ground ground) {
            int light = ground == Ground.LIGHT ? lightDirect : eitherDirect;
            int rgb = ground == Ground.DARK ? darkDirect : light;
            return rgb < 0 ? Colour.OWN : new Colour.Direct(rgb);
        }
    }
}
