// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Event;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.screen.State;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/** What the last check saw, as short as a column wants it: troubles, roots and shoot, else how wet it was. */
record LastTime(State state) {

    String of(Id<Pot> pot) {
        List<Findings> checks = state.journal().history(pot).stream()
                .map(Event::what)
                .filter(Happening.Checked.class::isInstance)
                .map(what -> ((Happening.Checked) what).findings())
                .toList();
        return checks.isEmpty() ? "" : say(checks.get(checks.size() - 1));
    }

    private String say(Findings found) {
        List<String> said = new ArrayList<>();
        found.troubles().stream().sorted().map(Terms.TROUBLES::say).forEach(said::add);
        found.roots().map(Terms.ROOTS::say).ifPresent(said::add);
        Optional<String> shoot = found.shoot().map(length -> Lengths.say(length, Whose.unit(state)));
        shoot.ifPresent(length -> said.add(said.isEmpty() ? "shoot " + length : length));
        return said.isEmpty()
                ? found.moisture().map(Terms.MOISTURES::say).orElse("")
                : said.stream().collect(Collectors.joining(", "));
    }
}
