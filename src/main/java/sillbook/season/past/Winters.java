// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.model.Variety;
import sillbook.season.Bloom;
import sillbook.season.ByLabel;
import sillbook.season.Phase;
import sillbook.season.PotLife;
import sillbook.season.Years.Year;

/** All that was ever grown, read once: the oldest winter first, in it by label. */
public final class Winters {
    private final Journal journal;
    private final LocalDate today;
    private final Map<Id<Pot>, List<Outcome>> outcomes;
    private final List<Grown> all;
    private final Tally tally;

    private Winters(Journal journal, LocalDate today) {
        this.journal = journal;
        this.today = today;
        this.outcomes = journal.outcomes().all().stream().collect(Collectors.groupingBy(Outcome::pot));
        this.all = journal.pots().all().stream()
                .sorted(ByLabel.OF_POTS)
                .map(pot -> PotLife.of(journal, pot, today))
                .filter(this::isGrown)
                .flatMap(this::grown)
                .sorted(Comparator.comparing(Grown::winter))
                .toList();
        this.tally = Tally.of(all);
    }

    /** Potted, moved or judged: the grower who writes only how a pot did is believed that there was one. */
    private boolean isGrown(PotLife life) {
        return life.stage() != Stage.WAITING
                || life.potted().isPresent()
                || outcomes.containsKey(life.pot().id());
    }

    /** What was grown up to a day; what is not potted yet is not among it. */
    public static Winters of(Journal journal, LocalDate today) {
        return new Winters(journal, today);
    }

    public List<Grown> all() {
        return all;
    }

    /** The counts of all of them together. */
    public Tally tally() {
        return tally;
    }

    public List<Grown> in(Season winter) {
        return only(grown -> grown.winter().equals(winter));
    }

    public List<Grown> of(Id<Variety> variety) {
        return only(grown -> grown.planting().variety().equals(variety));
    }

    /** What was grown of a variety in each winter in which anything of it was, the first first. */
    public List<VarietyWinter> winterByWinter(Id<Variety> variety) {
        Map<Season, List<Grown>> winters = of(variety).stream()
                .collect(Collectors.groupingBy(Grown::winter, LinkedHashMap::new, Collectors.toList()));
        return winters.entrySet().stream()
                .map(one -> new VarietyWinter(
                        one.getKey(),
                        one.getValue(),
                        Outcomes.of(one.getValue()).flowered()))
                .toList();
    }

    /** Which lengths of cold worked for a variety. */
    public List<ColdTried> coldTried(Id<Variety> variety) {
        return ColdTried.of(of(variety));
    }

    private List<Grown> only(Predicate<Grown> which) {
        return all.stream().filter(which).toList();
    }

    /** Those in which anything was grown, the first first. */
    public List<Season> seasons() {
        return all.stream().map(Grown::winter).distinct().toList();
    }

    /** What a winter came to. */
    public Summary summary(Season winter) {
        return new SummaryReading(journal, winter, in(winter)).summary();
    }

    /** The pots that share a thing, the best first, those of which none was judged last. */
    public List<Tallied> by(By what) {
        return by(what, all);
    }

    /** The same of one winter. */
    public List<Tallied> by(By what, Season winter) {
        return by(what, in(winter));
    }

    private static List<Tallied> by(By what, List<Grown> which) {
        Map<Shared, List<Grown>> groups = new LinkedHashMap<>();
        which.forEach(grown -> what.of(grown)
                .ifPresent(shared -> groups.computeIfAbsent(shared, none -> new ArrayList<>())
                        .add(grown)));
        return groups.entrySet().stream()
                .map(group -> Tallied.of(group.getKey(), group.getValue()))
                .sorted(Tallied.BEST)
                .toList();
    }

    /** The pots that share one thing. */
    public Tallied sharing(Shared what) {
        return Tallied.of(
                what,
                only(grown -> Stream.of(By.values()).anyMatch(by -> by.of(grown).equals(Optional.of(what)))));
    }

    private Stream<Grown> grown(PotLife life) {
        return life.winters().stream()
                .flatMap(year -> varieties(life.pot()).map(planting -> grown(life, year, planting)));
    }

    /** One planting for each variety, all its bulbs together. */
    private static Stream<Planting> varieties(Pot pot) {
        Map<Id<Variety>, Planting> each = new LinkedHashMap<>();
        pot.plantings()
                .forEach(planting -> each.merge(
                        planting.variety(),
                        planting,
                        (one, more) -> new Planting(one.variety(), one.count() + more.count(), one.purchase())));
        return each.values().stream();
    }

    private Grown grown(PotLife life, Year year, Planting planting) {
        List<Phase> cold = phases(life, year, Stage.COLD);
        boolean isLast = year.endExclusive().equals(LocalDate.MAX);
        return new Grown(
                life.pot(),
                planting,
                year.began()
                        .map(Day::likely)
                        .map(journal::seasonOf)
                        .orElse(life.pot().season()),
                isTold(life, year),
                Phase.longestAt(cold),
                cold.stream().mapToLong(phase -> phase.days().days()).sum(),
                life.cold(journal, year, today),
                bloom(year.bloom(), planting.variety()),
                phases(life, year, Stage.IN_BLOOM).stream().map(Phase::days).toList(),
                isLast && life.isFailed(),
                outcome(life.pot(), year, planting.variety()));
    }

    private static boolean isTold(PotLife life, Year year) {
        return life.phases(year).stream().anyMatch(phase -> phase.stage() != Stage.WAITING);
    }

    private static List<Phase> phases(PotLife life, Year year, Stage stage) {
        return life.phases(year).stream()
                .filter(phase -> phase.stage() == stage)
                .toList();
    }

    private static Bloom.Points bloom(Bloom bloom, Id<Variety> variety) {
        return Optional.of(bloom.of(variety))
                .filter(own -> own.firstFlower().isPresent())
                .orElse(bloom.pot());
    }

    private Optional<Outcome> outcome(Pot pot, Year year, Id<Variety> variety) {
        Map<Optional<Id<Variety>>, Outcome> written = outcomes.getOrDefault(pot.id(), List.of()).stream()
                .filter(outcome -> year.contains(outcome.day().likely()))
                .collect(Collectors.toMap(Outcome::variety, Function.identity(), (one, later) -> later));
        return Optional.ofNullable(written.get(Optional.of(variety)))
                .or(() -> Optional.ofNullable(written.get(Optional.<Id<Variety>>empty())));
    }
}
