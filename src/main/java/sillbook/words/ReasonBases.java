// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.season.Suiting.Basis;
import sillbook.season.past.Reason;
import sillbook.season.past.Reason.Cases;

/** What each reason for or against a variety rests on, in a few words. */
final class ReasonBases implements Cases<String> {

    /** With its mark: {@code ▪ elsewhere it did not fail}. */
    String say(Reason reason) {
        return reason.fold(this);
    }

    @Override
    public String fillsGap(Reason.FillsGap reason) {
        return "▪ it flowered then, last winter nothing did";
    }

    @Override
    public String didWell(Reason.DidWell reason) {
        return "▪ a mean of 4 or better in each";
    }

    @Override
    public String failedOnlyAt(Reason.FailedOnlyAt reason) {
        return "▪ elsewhere it did not fail";
    }

    @Override
    public String floppy(Reason.Floppy reason) {
        return "▪ as marked with its outcomes";
    }

    @Override
    public String neverTried(Reason.NeverTried reason) {
        return "▪ no pot of it grew yet";
    }

    @Override
    public String onePotOnly(Reason.OnePotOnly reason) {
        return "▪ too little to go by";
    }

    @Override
    public String onlyAt(Reason.OnlyAt reason) {
        return "▪ all its pots had their cold there";
    }

    @Override
    public String scented(Reason.HasScent reason) {
        return "▪ as written of the variety";
    }

    @Override
    public String needsNoCold(Reason.NeedsNoCold reason) {
        return "▫ no weeks of cold for its kind";
    }

    @Override
    public String suitsPots(Reason.SuitsPots reason) {
        Basis basis = reason.suiting().basis();
        return switch (basis) {
            case OWN_MARK -> "▪ by your own mark";
            case HEIGHT -> "▫ by its height";
            case CLASS -> "▫ by its class";
            case KIND -> "▫ by its kind";
            case PACKET, NOTHING -> throw new IllegalStateException("nothing suits pots by " + basis);
        };
    }

    @Override
    public String cheap(Reason.Cheap reason) {
        return "▪ in the lowest third of your prices";
    }
}
