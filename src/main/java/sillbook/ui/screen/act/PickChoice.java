// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.season.Due;
import sillbook.season.PotNow;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.LetterChoice;
import sillbook.words.PotNames;
import sillbook.words.StageWords;

/**
 * Asks by which rule to pick. What it picks comes to the picks there are; only pots the page shows are picked.
 *
 * @param thing what the cursor stands on; the rules are about what it has in common with others
 * @param shown the pots of the page
 */
record PickChoice(Optional<Thing> thing, List<Id<Pot>> shown) implements LetterChoice {

    PickChoice {
        shown = List.copyOf(shown);
    }

    @Override
    public String asks() {
        return "Pick";
    }

    @Override
    public List<Letter> letters(State beneath) {
        List<Letter> letters = new ArrayList<>();
        letters.add(rule('a', "all shown", beneath, pot -> true));
        place(beneath)
                .ifPresent(place ->
                        letters.add(rule('s', names(beneath).place(place), beneath, pot -> standsAt(pot, place))));
        now(beneath).ifPresent(now -> letters.addAll(alike(beneath, now)));
        letters.add(rule('d', "due", beneath, pot -> isDue(pot, Due.LATE) || isDue(pot, Due.TODAY)));
        letters.add(rule('l', "late", beneath, pot -> isDue(pot, Due.LATE)));
        letters.add(rule('r', "ready", beneath, pot -> isDue(pot, Due.READY)));
        letters.add(Letter.to('n', "none", () -> beneath.withPicked(Set.of())));
        return letters;
    }

    /** The rules about the pot under the cursor. */
    private List<Letter> alike(State beneath, PotNow now) {
        Id<Variety> variety = now.life().pot().first().variety();
        Function<PotNow, Object> kind = pot -> beneath.journal()
                .varieties()
                .get(pot.life().pot().first().variety())
                .kind();
        Object itsKind = kind.apply(now);
        return List.of(
                rule('v', names(beneath).variety(variety), beneath, pot -> holds(pot, variety)),
                rule('k', itsKind.toString(), beneath, pot -> kind.apply(pot).equals(itsKind)),
                rule(
                        'g',
                        StageWords.in(now.life().stage()),
                        beneath,
                        pot -> pot.life().stage() == now.life().stage()));
    }

    private Letter rule(char letter, String words, State beneath, Predicate<PotNow> wanted) {
        return Letter.to(letter, words, () -> picking(beneath, wanted));
    }

    private State picking(State beneath, Predicate<PotNow> wanted) {
        Set<Id<Pot>> picked = new LinkedHashSet<>(beneath.picked());
        shown.stream().filter(pot -> wanted.test(beneath.almanac().pot(pot))).forEach(picked::add);
        return beneath.withPicked(picked);
    }

    private static PotNames names(State state) {
        return new PotNames(state.journal());
    }

    private Optional<PotNow> now(State state) {
        return thing.flatMap(Thing::asPots).map(Thing.OfPots::first).map(state.almanac()::pot);
    }

    private Optional<Id<Place>> place(State state) {
        return thing.flatMap(Thing::asPlace)
                .or(() -> now(state).flatMap(pot -> pot.life().stands()).map(stay -> stay.place()));
    }

    private static boolean standsAt(PotNow pot, Id<Place> place) {
        return pot.life().stands().filter(stay -> stay.place().equals(place)).isPresent();
    }

    private static boolean holds(PotNow pot, Id<Variety> variety) {
        return pot.life().pot().plantings().stream()
                .anyMatch(planting -> planting.variety().equals(variety));
    }

    private static boolean isDue(PotNow pot, Due due) {
        return pot.next().filter(job -> job.due() == due).isPresent();
    }
}
