// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.text.Width;

class StyleTest {
    @Test
    void eachStyleHasALetter() {
        assertThat(Style.INK.letter()).isEqualTo('.');
        assertThat(Style.BOLD.letter()).isEqualTo('B');
        assertThat(Style.PENCIL.letter()).isEqualTo('d');
        assertThat(Style.RUST.letter()).isEqualTo('R');
        assertThat(Style.of(Role.FROST).letter()).isEqualTo('f');
        assertThat(Style.of(Role.LAMP).withBold().letter()).isEqualTo('W');
        assertThat(Style.UNDERLINED.letter()).isEqualTo('u');
        assertThat(Style.BOLD.withUnderline().letter()).isEqualTo('U');
        assertThat(Style.PENCIL.withWash().withRole(Role.LEAF))
                .isEqualTo(Style.of(Role.LEAF).withWash());
    }

    @Test
    void rustIsAlwaysBold() {
        assertThat(new Style(Role.RUST, false, false, false).bold()).isTrue();
    }

    /** One column wide, in Unicode and in ASCII, whatever the terminal holds of East Asian text. */
    @ParameterizedTest
    @EnumSource(Sign.class)
    void aSignTakesOneColumn(Sign sign) {
        assertThat(Width.of(sign.in(Alphabet.UNICODE))).isEqualTo(1);
        assertThat(Width.isDoubtful(sign.in(Alphabet.UNICODE))).isFalse();
        assertThat(sign.in(Alphabet.ASCII)).isBetween(0x21, 0x7E);
        assertThat(sign.in(Alphabet.ASCII) == '?').isEqualTo(sign == Sign.UNKNOWN || sign == Sign.ASSUMED);
    }

    @Test
    void coloursAreWithinTheirTables() {
        assertThatThrownBy(() -> new Colour.Basic(16)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Colour.Indexed(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Colour.Direct(0x1000000)).isInstanceOf(IllegalArgumentException.class);
    }
}
