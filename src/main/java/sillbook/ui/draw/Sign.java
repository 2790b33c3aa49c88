// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.text.Ascii;

/**
 * The signs of the page. Each is one column wide everywhere: none has the East Asian width "ambiguous". In ASCII several share a
 * character; what tells them apart there is their place.
 */
public enum Sign {
    CURSOR('▸'),
    PICKED('+'),
    CHOSEN('+'),
    SET_ASIDE('-'),
    LATE('!'),
    NOW('»', ':'),
    SOON('›', '.'),
    READY('✓'),
    CAUTION('▴'),
    /** Not known, not read. */
    UNKNOWN('?'),
    BELOW_BAND('❆'),
    ABOVE_BAND('☼'),

    HANDBOOK('▫'),
    OWN_RECORDS('▪'),
    ASSUMED('?'),

    TODAY('▾'),
    FOLD('╎'),
    /** The sill under the months, the foot rule, the top of a slip. */
    SILL('⎽'),
    TODAY_LIES_LEFT('◂'),
    TODAY_LIES_RIGHT('▸'),

    LEADER('⋅'),
    COLD('⎽'),
    COLD_FORETOLD('⣀'),
    COOL_ROOM('⎼'),
    COOL_ROOM_FORETOLD('⠤'),
    WARM_ROOM('⎻'),
    WARM_ROOM_FORETOLD('⠒'),
    BLOOM('✿'),
    BLOOM_FORETOLD('❀'),
    AFTER_BLOOM('~'),
    GAP('◌'),

    /** The four heights of a line in ink, low to top; a charted mean. */
    LOW('⎽', 'o'),
    MIDDLE('⎼', 'o'),
    HIGH('⎻', 'o'),
    TOP('⎺', 'o'),
    LOW_FORETOLD('⣀', '.'),
    MIDDLE_FORETOLD('⠤', '.'),
    HIGH_FORETOLD('⠒', '.'),
    TOP_FORETOLD('⠉', '.'),
    /** The lowest and highest around a charted mean, thin. */
    LOW_EXTREME('⎽', ':'),
    MIDDLE_EXTREME('⎼', ':'),
    HIGH_EXTREME('⎻', ':'),
    TOP_EXTREME('⎺', ':'),
    /** The edges of a band. */
    LOW_EDGE('⣀', '-'),
    MIDDLE_EDGE('⠤', '-'),
    HIGH_EDGE('⠒', '-'),
    TOP_EDGE('⠉', '-'),
    /** How full a place is: a third, two thirds, more, full. */
    THIRD_FULL('⣀'),
    TWO_THIRDS_FULL('⠤'),
    NEARLY_FULL('⠒'),
    FULL('⠉'),

    BAND_UPPER('⎡'),
    BAND('⎢'),
    BAND_LOWER('⎣'),
    POT_IN('╷'),
    POT_OUT('╵'),

    /** A bar or a standing that rests on what was read or recorded. */
    BAR('⎻'),
    /** A bar or a standing that is assumed or rests on few records. */
    BAR_ASSUMED('⠒', '.'),
    NEED('⎢'),
    SCORE('◉'),
    SCORE_OF_FEW('◦'),

    FIELD_LINE('_'),
    HIDDEN_LEFT('‹'),
    HIDDEN_RIGHT('›');

    private final int unicode;
    private final char ascii;

    Sign(char unicode) {
        this(unicode, Ascii.of(unicode));
    }

    Sign(char unicode, char ascii) {
        this.unicode = unicode;
        this.ascii = ascii;
    }

    public int in(Alphabet alphabet) {
        return alphabet == Alphabet.ASCII ? ascii : unicode;
    }
}
