// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.ColourDepth;

class SurroundingsTest {
    private static Map<String, String> environment(String settings) {
        return Stream.of(settings.split(" ", -1))
                .filter(setting -> !setting.isEmpty())
                .map(setting -> setting.split("=", 2))
                .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
    }

    /** NO_COLOR as no-color.org has it; the others as they are commonly held. */
    @ParameterizedTest(name = "{0}, --color={1}, terminal {2}: {3}")
    @CsvSource({
        "TERM=xterm, AUTO, true, SIXTEEN",
        "TERM=xterm-256color, AUTO, true, INDEXED_256",
        "TERM=xterm-256color COLORTERM=truecolor, AUTO, true, DIRECT_24_BIT",
        "TERM=xterm COLORTERM=24bit, AUTO, true, DIRECT_24_BIT",
        "TERM=xterm COLORTERM=yes, AUTO, true, SIXTEEN",
        "TERM=xterm-256color NO_COLOR=1, AUTO, true, NONE",
        "TERM=xterm-256color NO_COLOR=, AUTO, true, INDEXED_256",
        "TERM=xterm-256color NO_COLOR=0, AUTO, true, NONE",
        "TERM=xterm NO_COLOR=1 CLICOLOR_FORCE=1, AUTO, true, NONE",
        "TERM=xterm CLICOLOR_FORCE=1, AUTO, false, SIXTEEN",
        "TERM=xterm-256color FORCE_COLOR=1, AUTO, false, INDEXED_256",
        "TERM=xterm FORCE_COLOR=0, AUTO, false, NONE",
        "TERM=xterm FORCE_COLOR=0, AUTO, true, SIXTEEN",
        "TERM=xterm CLICOLOR_FORCE=, AUTO, false, NONE",
        "TERM=dumb, AUTO, true, NONE",
        "TERM=dumb FORCE_COLOR=1, AUTO, true, SIXTEEN",
        "TERM=dumb COLORTERM=truecolor, AUTO, true, NONE",
        "TERM=xterm-256color, AUTO, false, NONE",
        "TERM=xterm-256color, NEVER, true, NONE",
        "TERM=xterm FORCE_COLOR=1, NEVER, true, NONE",
        "TERM=xterm NO_COLOR=1, ALWAYS, false, SIXTEEN",
        "'', AUTO, true, SIXTEEN",
        "'', AUTO, false, NONE"
    })
    void theFirstThatSpeaksDecides(String settings, ColourWish wish, boolean isTerminal, ColourDepth depth) {
        assertThat(Surroundings.of(environment(settings), wish, isTerminal).depth())
                .isEqualTo(depth);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "LANG=en_GB.UTF-8, UNICODE",
        "LANG=C.utf8, UNICODE",
        "LANG=C, ASCII",
        "'', ASCII",
        "LANG=de_DE.ISO-8859-1, ASCII",
        "LC_ALL=C LANG=en_GB.UTF-8, ASCII",
        "LC_ALL= LC_CTYPE=nl_NL.UTF-8 LANG=C, UNICODE",
        "LC_CTYPE=C LANG=en_GB.UTF-8, ASCII"
    })
    void theFirstLocaleVariableThatIsSetDecides(String settings, Alphabet alphabet) {
        assertThat(Surroundings.of(environment(settings), ColourWish.AUTO, true).alphabet())
                .isEqualTo(alphabet);
    }
}
