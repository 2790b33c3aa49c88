// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.season.Today.Attention;
import sillbook.words.PlaceTerms;

/** What wants attention of a place, as JSON: its code, and fields of its own. */
record AttentionJson(Named named) implements Attention.Cases<Fields> {

    Fields of(Attention attention) {
        return attention.fold(this);
    }

    @Override
    public Fields overRoom(Attention.OverRoom over) {
        return place(over).number("pots", over.pots()).number("room", over.room());
    }

    @Override
    public Fields hazard(Attention.BesideHazard beside) {
        return place(beside)
                .number("pots", beside.pots())
                .number("bulbs", beside.bulbs())
                .text("hazard", PlaceTerms.HAZARDS.say(beside.hazard()));
    }

    @Override
    public Fields unchecked(Attention.Unchecked unchecked) {
        return place(unchecked).day("last", unchecked.last()).number("everyDays", unchecked.everyDays());
    }

    @Override
    public Fields notCold(Attention.NotCold notCold) {
        return place(notCold).number("pots", notCold.pots());
    }

    @Override
    public Fields dryLong(Attention.DryLong dry) {
        return place(dry)
                .text("bulbs", named.bulbs(dry.bulbs().purchase().id()))
                .number("count", dry.bulbs().bulbs())
                .number("dryDays", dry.bulbs().dry().days())
                .day("potBy", dry.potBy());
    }

    @Override
    public Fields outOfBand(Attention.OutOfBand out) {
        return outside(out, out.band(), out.strayed().since())
                .decimal("hours", Optional.of(out.strayed().hours()))
                .decimal("perDayC", Optional.empty());
    }

    @Override
    public Fields leavingBand(Attention.LeavingBand leaving) {
        return outside(leaving, leaving.band(), leaving.drift().on())
                .decimal("hours", Optional.empty())
                .decimal("perDayC", Optional.of(leaving.drift().perDay()));
    }

    private Fields outside(Attention outside, Band band, LocalDate from) {
        return place(outside)
                .object("bandC", Optional.of(band), PlacesJson::band)
                .day("from", from);
    }

    @Override
    public Fields unread(Attention.Unread unread) {
        return place(unread).day("last", unread.last()).number("days", unread.days());
    }

    @Override
    public Fields frost(Attention.FrostThere frost) {
        return place(frost)
                .number("pots", frost.pots())
                .number("lowestC", frost.lowest().celsius())
                .day("coldestOn", frost.coldestOn())
                .day("on", frost.on())
                .day("lookOn", frost.lookOn());
    }

    @Override
    public Fields trial(Attention.OnTrial trial) {
        return place(trial)
                .day("since", trial.trial().since())
                .number("days", trial.trial().days())
                .number("inBand", trial.trial().inBand())
                .object("bandC", Optional.of(trial.band()), PlacesJson::band);
    }

    private Fields place(Attention attention) {
        return new Fields().text("place", named.place(attention.place())).text("code", attention.code());
    }
}
