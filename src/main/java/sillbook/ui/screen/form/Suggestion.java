// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.Optional;
import sillbook.ui.screen.Layer;

/**
 * Something a blank could say.
 *
 * @param text what is put in the blank when it is taken
 * @param shown how it stands in the list: {@code 'Linen Parade'}
 * @param beside what is known of it: {@code paperwhite  14 in hand}
 * @param makes the form that makes it, when it is new
 */
public record Suggestion(String text, String shown, String beside, Optional<Layer> makes) {

    public static Suggestion of(String text, String beside) {
        return new Suggestion(text, text, beside, Optional.empty());
    }
}
