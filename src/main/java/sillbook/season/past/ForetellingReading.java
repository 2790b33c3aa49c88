// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.season.Bloom.Points;
import sillbook.season.ByLabel;
import sillbook.season.Phase;
import sillbook.season.PotLife;
import sillbook.season.Years.Year;

/**
 * Holds kept windows against the days that came.
 *
 * <p>Only what the plant decides is held against them: its first flower, and the end of its bloom. When a pot goes from
 * room to room is the grower's own doing, and makes no window true or false.
 *
 * <p>Of the windows kept for one of these in one winter of a pot, one counts: the first that was kept once the stage before had
 * begun; where none was, the last kept before that. The rule does not look at the day that came, but that the window must be older.
 */
record ForetellingReading(Journal journal, LocalDate today) {
    /** The stages whose beginning the plant decides. */
    static final Set<Stage> OF_THE_PLANT = EnumSet.of(Stage.IN_BLOOM, Stage.AFTER_BLOOM);

    /** What came to one pot. */
    private record OfPot(Pot pot, Season winter, KeptWindow window, LocalDate came) {
        /** What is the same for pots that count as one. */
        private List<Object> together() {
            return List.of(
                    pot.batch().<Object>map(batch -> batch).orElse(pot.id()),
                    winter,
                    window.stage(),
                    window.madeOn(),
                    window.earliest(),
                    window.likely(),
                    window.latest());
        }
    }

    /** One for each window whose day has come, in the order of the days. */
    List<Foretelling> read(Collection<KeptWindow> kept) {
        Map<Id<Pot>, List<KeptWindow>> byPot = kept.stream()
                .filter(window -> OF_THE_PLANT.contains(window.stage()))
                .collect(Collectors.groupingBy(KeptWindow::pot));
        Map<List<Object>, List<OfPot>> together = journal.pots().all().stream()
                .filter(pot -> byPot.containsKey(pot.id()))
                .sorted(ByLabel.OF_POTS)
                .flatMap(pot -> read(pot, byPot.getOrDefault(pot.id(), List.of())))
                .collect(Collectors.groupingBy(OfPot::together, LinkedHashMap::new, Collectors.toList()));
        return together.values().stream()
                .map(ForetellingReading::one)
                .sorted(Comparator.comparing(Foretelling::came))
                .toList();
    }

    private static Foretelling one(List<OfPot> together) {
        List<LocalDate> days = together.stream().map(OfPot::came).sorted().toList();
        OfPot first = together.get(0);
        return new Foretelling(
                together.stream().map(one -> one.pot().id()).toList(),
                first.winter(),
                first.window(),
                days.get((days.size() - 1) / 2));
    }

    private Stream<OfPot> read(Pot pot, List<KeptWindow> kept) {
        PotLife life = PotLife.of(journal, pot, today);
        List<OfPot> came = new ArrayList<>();
        for (Year year : life.winters()) {
            Season winter = year.began().map(Day::likely).map(journal::seasonOf).orElse(pot.season());
            Points bloom = year.bloom().pot();
            List<KeptWindow> ofYear = kept.stream()
                    .filter(window -> year.contains(window.madeOn()))
                    .toList();
            for (Stage stage : OF_THE_PLANT) {
                Optional<Day> day = stage == Stage.IN_BLOOM ? bloom.firstFlower() : bloom.pastBloom();
                day.filter(Day::isExact)
                        .map(Day::likely)
                        .ifPresent(on -> counting(life, ofYear, stage, on)
                                .ifPresent(window -> came.add(new OfPot(pot, winter, window, on))));
            }
        }
        return came.stream();
    }

    private static Optional<KeptWindow> counting(PotLife life, List<KeptWindow> kept, Stage stage, LocalDate came) {
        List<KeptWindow> before = kept.stream()
                .filter(window -> window.stage() == stage && window.madeOn().isBefore(came))
                .toList();
        LocalDate begun = stageBefore(life, stage, came);
        return before.stream()
                .filter(window -> !window.madeOn().isBefore(begun))
                .findFirst()
                .or(() -> before.stream().reduce((one, later) -> later));
    }

    /** When the stage began that the pot was in before that day. */
    private static LocalDate stageBefore(PotLife life, Stage stage, LocalDate came) {
        List<Phase> before = life.phases().stream()
                .filter(phase ->
                        phase.stage().isBefore(stage) && phase.days().start().isBefore(came))
                .toList();
        LocalDate begun = LocalDate.MIN;
        for (int i = before.size() - 1;
                i >= 0 && before.get(i).stage() == before.get(before.size() - 1).stage();
                i--) {
            begun = before.get(i).days().start();
        }
        return begun;
    }
}
