// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Ahead;
import sillbook.season.PotNow;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.VerdictWords;
import sillbook.words.Weeks;

/** The two lines in the foot on a pot. */
public record PotAside(State state) {
    private static final double DAYS_IN_WEEK = 7;

    /** On what the cursor stands on; nothing where that is no pot. */
    public Aside of(Optional<Thing> thing) {
        return thing.filter(Thing.OfPots.class::isInstance)
                .map(Thing.OfPots.class::cast)
                .map(pots -> of(pots.pots().get(0)))
                .orElse(Aside.NONE);
    }

    /** On one pot. */
    public Aside of(Id<Pot> id) {
        PotNow now = state.almanac().pot(id);
        PotNames names = new PotNames(state.journal());
        Pot pot = now.life().pot();
        String kind =
                state.journal().varieties().get(pot.first().variety()).kind().toString();
        List<String> first = new ArrayList<>();
        first.add(names.nameAndCount(List.of(id)) + ", " + kind + ".");
        first.add(cold(now));
        now.readiness().ifPresent(ready -> first.add(VerdictWords.say(ready.verdict())));
        return Aside.of(pot.label(), joined(first), joined(List.of(bloom(now), stands(now, names), wished(now))));
    }

    private static String joined(List<String> sentences) {
        return String.join(
                " ", sentences.stream().filter(sentence -> !sentence.isEmpty()).toList());
    }

    /** {@code 16 weeks in, about 15 cold enough.} */
    public static String cold(PotNow now) {
        int in = now.life().cold().daysIn();
        if (in == 0 || now.coldNeed().isEmpty()) {
            return "";
        }
        String weeks = Weeks.say(halves(in)) + " in";
        int enough = now.life().cold().daysColdEnough();
        return (enough == in ? weeks : weeks + ", about " + Weeks.number(halves(enough)) + " cold enough") + ".";
    }

    private static double halves(int days) {
        return Math.round(days * 2 / DAYS_IN_WEEK) / 2.0;
    }

    private static String bloom(PotNow now) {
        return now.ahead().stream()
                .filter(ahead -> ahead.stage() == Stage.IN_BLOOM)
                .findFirst()
                .map(Ahead::window)
                .map(window -> "Bloom about " + Days.date(window.likely()) + " ("
                        + Days.fromTo(window.earliest(), window.latest()) + ").")
                .orElse("");
    }

    private static String stands(PotNow now, PotNames names) {
        return now.life()
                .stands()
                .map(stay -> "In the " + names.place(stay.place()) + ".")
                .orElse(now.life().stage() == Stage.WAITING ? "Not potted yet." : "");
    }

    private static String wished(PotNow now) {
        return now.useBy().map(day -> "Use by " + Days.day(day) + ".").orElse("");
    }
}
