// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Choice;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Variety;

/** How many bulbs of a variety the grower usually takes for a season, and what says so. */
public record UsualCount(int bulbs, Basis basis) {

    /** The last of these that there is, from the surest word on. */
    public enum Basis {
        CHOSEN,
        BOUGHT,
        POTTED
    }

    /** What was chosen last, else what was bought, else what was potted; empty for a variety of which nothing is known. */
    public static Optional<UsualCount> of(Id<Variety> variety, Season before, Journal journal) {
        return chosen(variety, before, journal)
                .map(bulbs -> new UsualCount(bulbs, Basis.CHOSEN))
                .or(() -> bought(variety, journal).map(bulbs -> new UsualCount(bulbs, Basis.BOUGHT)))
                .or(() -> potted(variety, journal).map(bulbs -> new UsualCount(bulbs, Basis.POTTED)));
    }

    private static Optional<Integer> chosen(Id<Variety> variety, Season before, Journal journal) {
        return journal.choices().all().stream()
                .filter(choice -> choice.variety().equals(variety))
                .filter(choice ->
                        choice.season().isBefore(before) && choice.bulbs().isPresent())
                .max(Comparator.comparing(Choice::season))
                .flatMap(Choice::bulbs);
    }

    private static Optional<Integer> bought(Id<Variety> variety, Journal journal) {
        return ofLastSeason(
                journal.purchases().all().stream()
                        .filter(purchase -> purchase.variety().equals(variety))
                        .filter(purchase -> purchase.state() == State.IN_HAND || purchase.state() == State.ORDERED),
                Purchase::season,
                Purchase::count);
    }

    private static Optional<Integer> potted(Id<Variety> variety, Journal journal) {
        return ofLastSeason(
                journal.pots().all().stream().filter(pot -> pot.holds(variety)),
                Pot::season,
                pot -> pot.bulbsOf(variety));
    }

    private static <T> Optional<Integer> ofLastSeason(
            Stream<T> things, Function<T, Season> season, ToIntFunction<T> bulbs) {
        TreeMap<Season, Integer> bySeason =
                things.collect(Collectors.groupingBy(season, TreeMap::new, Collectors.summingInt(bulbs)));
        return Optional.ofNullable(bySeason.lastEntry()).map(Map.Entry::getValue);
    }
}
