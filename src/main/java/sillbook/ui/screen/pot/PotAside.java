// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.PotNow;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.words.PotNames;
import sillbook.words.PotWords;
import sillbook.words.VerdictWords;

/** The two lines in the foot on a pot. */
public record PotAside(State state) {
    /** On what the cursor stands on; nothing where that is no pot. */
    public Aside of(Optional<Thing> thing) {
        return thing.flatMap(Thing::asPots).map(pots -> of(pots.first())).orElse(Aside.NONE);
    }

    /** On one pot: what it is and how it stands; then what matters most of it, else when it flowers. */
    public Aside of(Id<Pot> id) {
        PotNow now = state.almanac().pot(id);
        PotNames names = new PotNames(state.journal());
        Pot pot = now.life().pot();
        Kind kind = state.journal().varieties().get(pot.first().variety()).kind();
        String first = names.nameAndCount(List.of(id)) + ", " + kind + ".";
        Optional<String> cold = PotWords.cold(now).map(weeks -> weeks + ".");
        Optional<String> verdict = now.readiness().map(ready -> VerdictWords.say(ready.verdict()));
        Optional<String> useBy = PotWords.useBy(now);
        return new PotWords(state.journal(), state.shown().today())
                .matters(now)
                .map(matter -> Aside.of(pot.label(), joined(List.of(Optional.of(first), cold, useBy)), matter))
                .orElseGet(() -> Aside.of(
                        pot.label(),
                        joined(List.of(Optional.of(first), cold, verdict)),
                        joined(List.of(PotWords.bloom(now), stands(now, names), useBy))));
    }

    private static String joined(List<Optional<String>> sentences) {
        return sentences.stream().flatMap(Optional::stream).collect(Collectors.joining(" "));
    }

    private static Optional<String> stands(PotNow now, PotNames names) {
        return now.life()
                .stands()
                .map(stay -> "In the " + names.place(stay.place()) + ".")
                .or(() -> now.life().stage() == Stage.WAITING ? Optional.of("Not potted yet.") : Optional.empty());
    }
}
