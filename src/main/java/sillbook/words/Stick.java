// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Ahead;
import sillbook.season.PotNow;
import sillbook.season.Readiness;

/**
 * What is pencilled on the stick of a pot, or on those of a batch that are alike.
 *
 * @param labels as they are said: {@code T9-T14}
 * @param name the variety in quotes and the bulbs: {@code 'Marrow Lane' x5}
 * @param kind of each variety in it
 * @param potted empty while it waits to be
 * @param checkFrom the day its usual weeks of cold are had; of a pot in the cold
 * @param useBy the last good day in the cold; of a pot there
 * @param flowers the likely day of the first flower in its own season, until it has come
 */
public record Stick(
        List<Id<Pot>> pots,
        String labels,
        String name,
        String kind,
        Optional<Day> potted,
        Optional<LocalDate> checkFrom,
        Optional<LocalDate> useBy,
        Optional<LocalDate> flowers) {
    public Stick {
        pots = List.copyOf(pots);
    }

    /** Of pots for all of which the first speaks. */
    static Stick of(Journal journal, List<Id<Pot>> pots, PotNow first) {
        PotNames names = new PotNames(journal);
        Pot pot = first.life().pot();
        return new Stick(
                pots,
                names.labels(pots),
                names.nameAndCount(pots),
                kinds(journal, pot),
                first.life().potted(),
                first.readiness().map(Readiness::coldEnoughOn),
                first.useBy(),
                first.ahead().stream()
                        .filter(ahead -> ahead.stage() == Stage.IN_BLOOM)
                        .findFirst()
                        .map(Ahead::window)
                        .map(window -> window.likely())
                        .filter(day -> journal.seasonOf(day).equals(pot.season())));
    }

    private static String kinds(Journal journal, Pot pot) {
        return pot.plantings().stream()
                .map(planting ->
                        journal.varieties().get(planting.variety()).kind().toString())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** {@code T9-T14 'Marrow Lane' x5, potted 14 Oct, check from 27 Jan, use by 3 Mar}. */
    public String line() {
        List<String> said = new ArrayList<>(List.of(labels + " " + name));
        add(potted, day -> "potted " + (day.isExact() ? Days.date(day.likely()) : Days.day(day)), said);
        said.addAll(ahead());
        return String.join(", ", said);
    }

    /** What is to be done when: the days in the cold, or where there are none the first flower. */
    public List<String> ahead() {
        List<String> said = new ArrayList<>();
        add(checkFrom, day -> "check from " + Days.date(day), said);
        add(useBy, day -> "use by " + Days.date(day), said);
        if (said.isEmpty()) {
            add(flowers, day -> "flowers about " + Days.date(day), said);
        }
        return said;
    }

    private static <T> void add(Optional<T> fact, Function<T, String> words, List<String> said) {
        fact.map(words).ifPresent(said::add);
    }
}
