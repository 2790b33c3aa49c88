// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import sillbook.season.PlaceClimate.Side;
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
            case BELOW_BAND -> Style.of(Role.FROST).withBold();
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

    @Override
    public Sign outOfBand(Attention.OutOfBand attention) {
        return of(attention.strayed().side());
    }

    @Override
    public Sign leavingBand(Attention.LeavingBand attention) {
        return of(attention.drift().side());
    }

    private static Sign of(Side side) {
        return side == Side.OVER ? Sign.ABOVE_BAND : Sign.BELOW_BAND;
    }

    @Override
    public Sign unread(Attention.Unread attention) {
        return Sign.UNKNOWN;
    }

    @Override
    public Sign frost(Attention.FrostThere attention) {
        return Sign.BELOW_BAND;
    }

    @Override
    public Sign trial(Attention.OnTrial attention) {
        return attention.trial().isOver() && !attention.trial().isPassed() ? Sign.CAUTION : Sign.SOON;
    }
}
