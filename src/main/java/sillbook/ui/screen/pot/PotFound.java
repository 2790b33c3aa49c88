// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.season.PotNow;
import sillbook.ui.screen.State;
import sillbook.words.PotNames;
import sillbook.words.Terms;

/** The words a line of pots is found by: their labels, varieties and kinds, where they stand, their stage. */
public record PotFound(State state) {

    public String words(List<Id<Pot>> pots) {
        return pots.stream()
                .flatMap(pot -> words(state.almanac().pot(pot)))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private Stream<String> words(PotNow now) {
        Pot pot = now.life().pot();
        Stream<String> bulbs = pot.plantings().stream()
                .map(planting -> state.journal().varieties().get(planting.variety()))
                .flatMap((Variety variety) ->
                        Stream.of(variety.name(), variety.kind().toString()));
        Stream<String> place =
                now.life().stands().stream().map(stay -> new PotNames(state.journal()).place(stay.place()));
        String stage = Terms.STAGES.say(now.life().stage());
        return Stream.of(Stream.of(pot.label()), bulbs, place, Stream.of(stage)).flatMap(words -> words);
    }
}
