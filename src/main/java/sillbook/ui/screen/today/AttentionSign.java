// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import sillbook.season.Today.Attention;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;

/** The sign before what is said of a place. */
public final class AttentionSign implements Attention.Cases<Sign> {
    private static final AttentionSign SIGNS = new AttentionSign();

    private AttentionSign() {}

    public static Sign of(Attention attention) {
        return attention.fold(SIGNS);
    }

    public static Style style(Sign sign) {
        return switch (sign) {
            case ABOVE_BAND -> Style.of(Role.LAMP).withBold();
            case UNKNOWN, CAUTION, LATE -> Style.RUST;
            default -> Style.INK;
        };
    }

    @Override
    public Sign overRoom(Attention.OverRoom attention) {
        return Sign.LATE;
    }

    @Override
    public Sign hazard(Attention.BesideHazard attention) {
        return Sign.CAUTION;
    }

    @Override
    public Sign unchecked(Attention.Unchecked attention) {
        return Sign.UNKNOWN;
    }

    @Override
    public Sign dryLong(Attention.DryLong attention) {
        return Sign.CAUTION;
    }

    @Override
    public Sign notCold(Attention.NotCold attention) {
        return Sign.ABOVE_BAND;
    }
}
