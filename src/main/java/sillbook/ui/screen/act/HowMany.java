// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Remark;
import sillbook.words.Heard;
import sillbook.words.PotNames;

/** Not all of several pots, but so many of those whose turn it is. */
record HowMany(State state, List<Id<Pot>> pots) {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}");

    /** All where nothing is written. */
    Heard<Integer> parse(String text) {
        int all = pots.size();
        int number = text.isEmpty() ? all : NUMBER.matcher(text).matches() ? Integer.parseInt(text) : 0;
        return number >= 1 && number <= all
                ? Heard.as(number)
                : Heard.not(
                        "1 to " + all,
                        "'" + text + "' is not 1 to " + all + ". How many of the " + all + " go? Nothing was moved.");
    }

    /** Those that go; all while it is not known where to. */
    List<Id<Pot>> going(Optional<Integer> many, Optional<Place> place, Optional<Stage> stage) {
        int wanted = many.orElse(pots.size());
        if (place.isEmpty() || stage.isEmpty() || wanted == pots.size()) {
            return pots;
        }
        List<Id<Pot>> turns =
                state.almanac().outlook().turnsInto(stage.get(), place.get().id(), pots);
        return turns.subList(0, Math.min(wanted, turns.size()));
    }

    /** Which they are, or that none is left to go. */
    Remark remark(Heard<Integer> many, List<Id<Pot>> going) {
        return many.fold(number -> which(number, going), Blanks::wrong);
    }

    private Remark which(int number, List<Id<Pot>> going) {
        if (going.isEmpty()) {
            return Remark.wrong("all are there", "All of them stand there already. Nothing was moved.");
        }
        return Remark.understood(number == pots.size() ? "all " + number : new PotNames(state.journal()).labels(going));
    }
}
