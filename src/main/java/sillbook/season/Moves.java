// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Season;

/**
 * The days on which pots came to a place, and on which they left it; a day for each pot, the earliest first.
 *
 * @param out done with there counts as left
 */
public record Moves(List<LocalDate> in, List<LocalDate> out) {
    public static final Moves NONE = new Moves(List.of(), List.of());

    public Moves {
        in = in.stream().sorted().toList();
        out = out.stream().sorted().toList();
    }

    public boolean isEmpty() {
        return in.isEmpty() && out.isEmpty();
    }

    /** Of every place that pots of a season have stood at, plants that live on in it with them, as far as it has happened. */
    public static Map<Id<Place>, Moves> of(Journal journal, Outlook outlook, Season season) {
        LocalDate today = outlook.day();
        List<PotLife> lives = Stream.concat(
                        journal.potsOf(season).stream(), outlook.livingOn().in(season))
                .map(pot -> PotLife.of(journal, pot, today))
                .toList();
        Map<Id<Place>, List<LocalDate>> in = new HashMap<>();
        Map<Id<Place>, List<LocalDate>> out = new HashMap<>();
        lives.forEach(life -> walk(life.phases(), today, in, out));
        Map<Id<Place>, Moves> moves = new HashMap<>();
        in.forEach((place, days) -> moves.put(place, new Moves(days, out.getOrDefault(place, List.of()))));
        return Map.copyOf(moves);
    }

    private static void walk(
            List<Phase> phases,
            LocalDate today,
            Map<Id<Place>, List<LocalDate>> in,
            Map<Id<Place>, List<LocalDate>> out) {
        Optional<Id<Place>> before = Optional.empty();
        LocalDate until = today;
        for (Phase phase : phases) {
            if (!phase.place().equals(before)) {
                LocalDate day = phase.days().start();
                before.ifPresent(place -> note(out, place, day));
                phase.place().ifPresent(place -> note(in, place, day));
            }
            before = phase.place();
            until = phase.days().endExclusive();
        }
        LocalDate end = until;
        before.filter(place -> !end.isAfter(today)).ifPresent(place -> note(out, place, end));
    }

    private static void note(Map<Id<Place>, List<LocalDate>> days, Id<Place> place, LocalDate day) {
        days.computeIfAbsent(place, it -> new ArrayList<>()).add(day);
    }
}
