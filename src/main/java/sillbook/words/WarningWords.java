// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.reckon.dates.Warning;

/** What a schedule warns of, as sentences. */
public record WarningWords() implements Warning.Cases<String> {

    public String say(Warning warning) {
        return warning.fold(this);
    }

    private static String weeks(int days) {
        return Weeks.sayDays(days);
    }

    @Override
    public String tooLittleCold(Warning.TooLittleCold warning) {
        int had = warning.pottedDays() + warning.creditedDays();
        return "Only " + weeks(had) + " of cold, of at least "
                + Weeks.number(Weeks.ofDays(warning.need().low())) + ": buds may abort.";
    }

    @Override
    public String tooMuchCold(Warning.TooMuchCold warning) {
        String held = warning.forWish() ? "Held back for its wish it has " : "Already ";
        return held + weeks(warning.days()) + " of cold: stems grow long and weak.";
    }

    @Override
    public String late(Warning.Late warning) {
        return "Late for its wish on " + Days.day(warning.wish()) + ": flowers about "
                + Days.date(warning.bloom().likely()) + ".";
    }

    @Override
    public String tooLate(Warning.TooLate warning) {
        return "Too late for its wish on " + Days.day(warning.wish()) + ": flowers "
                + Days.date(warning.bloom().earliest()) + " at the earliest.";
    }

    @Override
    public String notReachable(Warning.NotReachable warning) {
        return "Its wish on " + Days.day(warning.wish()) + " cannot be reached: flowers about "
                + Days.date(warning.bloom().likely()) + ".";
    }

    @Override
    public String noPottedCold(Warning.NoPottedCold warning) {
        return "This kind needs some cold weeks in its pot, for the roots.";
    }

    @Override
    public String dryCredit(Warning.DryCredit warning) {
        return "Of " + weeks(warning.dryDays()) + " dry cold only " + weeks(warning.creditedDays()) + " count.";
    }

    @Override
    public String noCommonTime(Warning.NoCommonTime warning) {
        return "No common time: one needs " + weeks(warning.longestMinimum()) + ", another bears "
                + weeks(warning.shortestMaximum()) + ".";
    }

    @Override
    public String coldAndNoCold(Warning.ColdAndNoCold warning) {
        return "A kind that needs cold and one that needs none stand in one pot.";
    }
}
