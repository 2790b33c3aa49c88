// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/**
 * How a cell is shown.
 *
 * @param washed whether it stands on the faint ground of the cursor's line
 */
public record Style(Role role, boolean bold, boolean underlined, boolean washed) {
    public static final Style INK = of(Role.INK);
    public static final Style BOLD = INK.withBold();
    public static final Style PENCIL = of(Role.PENCIL);
    public static final Style RUST = of(Role.RUST);
    /** Text typed into a field; the found word. */
    public static final Style UNDERLINED = INK.withUnderline();

    public Style {
        bold = bold || role == Role.RUST;
    }

    public static Style of(Role role) {
        return new Style(role, false, false, false);
    }

    public Style withRole(Role other) {
        return new Style(other, bold, underlined, washed);
    }

    public Style withBold() {
        return new Style(role, true, underlined, washed);
    }

    public Style withUnderline() {
        return new Style(role, bold, true, washed);
    }

    public Style withWash() {
        return new Style(role, bold, underlined, true);
    }

    /** One letter for pictures of styles: the role's, as a capital when bold ({@code B} for bold ink); {@code u} and {@code U} underlined. */
    public char letter() {
        if (underlined) {
            return bold ? 'U' : 'u';
        }
        if (role == Role.INK) {
            return bold ? 'B' : '.';
        }
        return bold ? Character.toUpperCase(role.letter()) : role.letter();
    }
}
