// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sillbook.model.Id;
import sillbook.model.Pot;

/** The displays that are made up now. One is known by its name, whatever its capitals. */
final class Displays {
    private final Map<String, List<PotLife>> byName = new TreeMap<>();

    Displays(Collection<PotLife> lives) {
        lives.stream()
                .filter(life -> life.display().isPresent())
                .sorted(ByLabel.OF_LIVES)
                .forEach(life -> life.display()
                        .ifPresent(in -> byName.computeIfAbsent(key(in.value()), none -> new ArrayList<>())
                                .add(life)));
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The pots of a display, by label; none when there is no display of that name. */
    List<Id<Pot>> in(String name) {
        return byName.getOrDefault(key(name), List.of()).stream()
                .map(life -> life.pot().id())
                .toList();
    }

    /** The names of all displays, as they were first written. */
    List<String> names() {
        return byName.values().stream()
                .map(lives -> lives.get(0).display())
                .flatMap(Optional::stream)
                .map(Noted::value)
                .toList();
    }
}
