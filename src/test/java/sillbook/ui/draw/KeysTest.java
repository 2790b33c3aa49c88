// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeysTest {
    static Stream<Key> named() {
        Stream<Key> names = Stream.of(Key.Name.values())
                .flatMap(name -> Stream.of(Key.named(name), new Key.Named(name, true, true)));
        return Stream.concat(names, Stream.of(Key.ctrl('a'), Key.ctrl('z'), Keys.SPACE, Keys.BACK_TAB));
    }

    @ParameterizedTest
    @MethodSource("named")
    void aKeyIsFoundByTheNameThePageGivesIt(Key key) {
        assertThat(Keys.parse(key.words())).hasValue(key);
    }

    @Test
    void aSingleCharacterIsItself() {
        assertThat(Keys.parse("m")).hasValue(Key.of('m'));
        assertThat(Keys.parse("🌷")).hasValue(Key.of(0x1F337));
        assertThat(Keys.parse("Home sweet home")).isEmpty();
        assertThat(Keys.parse("")).isEmpty();
    }

    @Test
    void lettersAreShownLargeAndMeantInEitherCase() {
        assertThat(Key.of('m').words()).isEqualTo("M");
        assertThat(Key.of('M').anyCase()).isEqualTo(Key.of('m'));
        assertThat(Keys.ENTER.anyCase()).isEqualTo(Keys.ENTER);
        assertThat(Keys.PAGE_DOWN.words()).isEqualTo("PgDn");
        assertThat(Keys.BACK_TAB.words()).isEqualTo("Shift-Tab");
    }

    @ParameterizedTest
    @ValueSource(chars = {'A', '1', 'é', ' '})
    void ctrlGoesWithLettersOnly(char letter) {
        assertThatThrownBy(() -> Key.ctrl(letter)).isInstanceOf(IllegalArgumentException.class);
    }
}
