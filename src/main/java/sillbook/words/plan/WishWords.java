// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.plan.LatestDays;
import sillbook.plan.WishMet;
import sillbook.text.Initial;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.Lengths;
import sillbook.words.PotNames;
import sillbook.words.WishTerms;

/** Wishes, and how a plan stands to them, as they are said. */
public record WishWords(Journal journal) {
    private static final double RARELY = 0.05;
    private static final double NEARLY_ALWAYS = 0.95;
    private static final int TENTHS = 10;

    /** {@code 14 Feb, 3 scented}; {@code 10 Jan-25 Mar}; {@code Easter, 28 Mar, tulip, white, up to 30 cm}. */
    public String what(Wish wish) {
        List<String> facts = new ArrayList<>();
        if (!wish.feast().isEmpty()) {
            facts.add(wish.feast());
        }
        facts.add(Days.span(wish.from(), wish.to()));
        String asks = asks(wish.asks());
        if (!asks.isEmpty()) {
            facts.add(asks);
        }
        return String.join(", ", facts);
    }

    /** {@code 3 scented}, {@code 2 pots}, {@code white tulip, up to 30 cm, full}; empty where anything will do. */
    public String asks(WishedFor asks) {
        List<String> sort = new ArrayList<>();
        if (asks.scented()) {
            sort.add("scented");
        }
        if (!asks.colour().isEmpty()) {
            sort.add(asks.colour());
        }
        asks.kind().map(Kind::toString).ifPresent(sort::add);
        if (asks.pots() > 1) {
            sort.add(0, sort.isEmpty() ? Counts.of(asks.pots(), "pot") : Integer.toString(asks.pots()));
        }
        List<String> facts = new ArrayList<>();
        if (!sort.isEmpty()) {
            facts.add(String.join(" ", sort));
        }
        asks.tallest()
                .map(most -> "up to " + Lengths.say(most, journal.settings().lengths()))
                .ifPresent(facts::add);
        asks.stage().map(WishTerms.STAGES::say).ifPresent(facts::add);
        asks.room().map(new PotNames(journal)::place).ifPresent(facts::add);
        return String.join(", ", facts);
    }

    /** {@code met}; {@code 7 days short}, {@code 1 pot short}. */
    public static String state(WishMet met) {
        return met.isMet() ? "met" : Counts.of(met.lacks(), met.wish().asks().isEveryDay() ? "day" : "pot") + " short";
    }

    /** {@code 14 Feb, 3 scented: met}. */
    public String says(WishMet met) {
        return what(met.wish()) + ": " + state(met);
    }

    /** {@code 8 in 10}; of nothing else {@code sure} or {@code no chance} than of what is. */
    public static String chance(double chance) {
        if (chance <= 0) {
            return "no chance";
        }
        if (chance >= 1) {
            return "sure";
        }
        if (chance < RARELY) {
            return "under 1 in 10";
        }
        return chance >= NEARLY_ALWAYS ? "over 9 in 10" : Math.round(chance * TENTHS) + " in 10";
    }

    /** {@code 2 more, 3-5 days apart, would make it sure in nine of ten}; empty of a wish for every day. */
    public static Optional<String> spares(WishMet met) {
        if (met.wish().asks().isEveryDay()) {
            return Optional.empty();
        }
        return Optional.of(met.spares()
                .map(more -> more == 0
                        ? "sure in nine of ten as it is"
                        : more + " more" + (more == 1 ? "" : ", 3-5 days apart,")
                                + " would make it sure in nine of ten")
                .orElse("a few pots more would not make it sure in nine of ten"));
    }

    /** {@code 'Inkwell': order by 1 Sep, pot by 15 Sep, bring in by 20 Jan}. */
    public String latest(LatestDays days) {
        String order =
                days.orderBy().map(by -> "order by " + Days.date(by) + ", ").orElse("");
        return new PotNames(journal).variety(days.variety()) + ": " + order + "pot by " + Days.date(days.potBy())
                + ", bring in by " + Days.date(days.bringInBy());
    }

    /** All of it in sentences: how it stands, the chance, the spares, the last days. */
    public List<String> lines(WishMet met) {
        List<String> lines = new ArrayList<>();
        lines.add(says(met) + "; " + foretold(met.chance()) + ".");
        spares(met).map(WishWords::sentence).ifPresent(lines::add);
        met.latest().map(this::latest).map(WishWords::sentence).ifPresent(lines::add);
        return lines;
    }

    private static String foretold(double chance) {
        return chance > 0 && chance < 1 ? "chance " + chance(chance) : chance(chance);
    }

    private static String sentence(String words) {
        return Initial.large(words) + ".";
    }
}
