// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.Optional;
import sillbook.season.Due;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;

/** The sign before a pot whose next job is near, and how it is drawn. */
public record DueSign(Sign sign, Style style) {

    /** Empty for what is due later. */
    public static Optional<DueSign> of(Due due) {
        return switch (due) {
            case LATE -> Optional.of(new DueSign(Sign.LATE, Style.RUST));
            case READY -> Optional.of(new DueSign(Sign.READY, Style.of(Role.LEAF)));
            case TODAY -> Optional.of(new DueSign(Sign.NOW, Style.BOLD));
            case SOON -> Optional.of(new DueSign(Sign.SOON, Style.PENCIL));
            case LATER -> Optional.empty();
        };
    }
}
