// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.PotNow;
import sillbook.text.Width;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.words.PotNames;
import sillbook.words.PotWords;
import sillbook.words.VerdictWords;
import sillbook.words.YearWords;

/** The two lines in the foot on a pot. */
public record PotAside(State state) {
    /** What the narrowest screen has room for beside a label. */
    private static final int LINE = 74;

    /** On what the cursor stands on; nothing where that is no pot. */
    public Aside of(Optional<Thing> thing) {
        return thing.flatMap(Thing::asPots).map(pots -> of(pots.first())).orElse(Aside.NONE);
    }

    /** On one pot: what it is, and what matters most of it; else whether it may come in, or when it flowers. */
    public Aside of(Id<Pot> id) {
        PotNow now = state.almanac().pot(id);
        return new PotWords(state.journal(), state.shown().today())
                .matters(now)
                .map(matter -> mattering(now, matter))
                .orElseGet(() -> now.readiness().isPresent() ? inCold(now) : elsewhere(now));
    }

    /** What matters has both lines where it needs them. */
    private Aside mattering(PotNow now, String matter) {
        return Width.of(matter) > LINE
                ? Aside.of(label(now), matter)
                : Aside.of(label(now), fitting(what(now), cold(now), PotWords.useBy(now)), matter);
    }

    private Aside inCold(PotNow now) {
        return Aside.of(
                label(now),
                fitting(what(now), cold(now), PotWords.bloom(now)),
                fitting(verdict(now), PotWords.useBy(now), stands(now)));
    }

    private Aside elsewhere(PotNow now) {
        return Aside.of(
                label(now),
                fitting(what(now), cold(now)),
                fitting(PotWords.bloom(now), stands(now), PotWords.useBy(now)));
    }

    private static String label(PotNow now) {
        return now.life().pot().label();
    }

    private Optional<String> what(PotNow now) {
        Pot pot = now.life().pot();
        Kind kind = state.journal().varieties().get(pot.first().variety()).kind();
        String winter = YearWords.which(now.life());
        return Optional.of(names().nameAndCount(List.of(pot.id())) + ", " + kind
                + (winter.isEmpty() ? "" : ", its " + winter) + ".");
    }

    private static Optional<String> cold(PotNow now) {
        return PotWords.cold(now).map(weeks -> weeks + ".");
    }

    private Optional<String> verdict(PotNow now) {
        return now.readiness()
                .map(ready -> VerdictWords.say(
                        ready, now.life(), state.journal().settings().lengths()));
    }

    private PotNames names() {
        return new PotNames(state.journal());
    }

    /** As many of these sentences as a line has room for, and the first in any case. */
    @SafeVarargs
    private static String fitting(Optional<String>... sentences) {
        StringBuilder line = new StringBuilder();
        for (Optional<String> sentence : sentences) {
            String said = sentence.orElse("");
            if (line.isEmpty()) {
                line.append(said);
            } else if (!said.isEmpty() && Width.of(line.toString()) + 1 + Width.of(said) <= LINE) {
                line.append(' ').append(said);
            }
        }
        return line.toString();
    }

    private Optional<String> stands(PotNow now) {
        return now.life()
                .stands()
                .map(stay -> "In the " + names().place(stay.place()) + ".")
                .or(() -> now.life().stage() == Stage.WAITING ? Optional.of("Not potted yet.") : Optional.empty());
    }
}
