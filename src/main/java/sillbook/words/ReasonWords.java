// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Variety.Scent;
import sillbook.season.past.Reason;
import sillbook.season.past.Reason.Cases;

/** The reasons for and against a variety, as they are said. */
public record ReasonWords(Journal journal) implements Cases<String> {

    /** {@code fills your gap of 21-27 Feb}. */
    public String say(Reason reason) {
        return reason.fold(this);
    }

    @Override
    public String fillsGap(Reason.FillsGap reason) {
        return "fills your gap of " + Days.span(reason.days());
    }

    @Override
    public String didWell(Reason.DidWell reason) {
        return "did well here " + Counts.of(reason.winters(), "winter") + " running";
    }

    @Override
    public String failedOnlyAt(Reason.FailedOnlyAt reason) {
        return "failed " + times(reason.times()) + ", in the " + place(reason.place()) + " only";
    }

    @Override
    public String floppy(Reason.Floppy reason) {
        return "floppy, " + Counts.of(reason.winters(), "winter");
    }

    @Override
    public String neverTried(Reason.NeverTried reason) {
        return "never tried here";
    }

    @Override
    public String onePotOnly(Reason.OnePotOnly reason) {
        return "one pot only: worth a second try";
    }

    @Override
    public String onlyAt(Reason.OnlyAt reason) {
        return "only in the " + place(reason.place()) + " so far";
    }

    @Override
    public String scented(Reason.HasScent reason) {
        return reason.scent() == Scent.STRONG ? "strongly scented" : "scented";
    }

    @Override
    public String needsNoCold(Reason.NeedsNoCold reason) {
        return "needs no cold: frees the cold places";
    }

    @Override
    public String suitsPots(Reason.SuitsPots reason) {
        return "suits pots";
    }

    @Override
    public String cheap(Reason.Cheap reason) {
        return "cheap, " + Prices.say(reason.each()) + " each";
    }

    private String place(Id<Place> place) {
        return journal.places().get(place).name();
    }

    private static String times(int count) {
        return count == 2 ? "twice" : count + " times";
    }
}
