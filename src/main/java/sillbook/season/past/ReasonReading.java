// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.model.Failure.Sign;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.model.Variety.Scent;
import sillbook.season.Outlook;
import sillbook.season.Suiting;
import sillbook.season.Suiting.Standing;
import sillbook.season.past.Grown.Rating;

/** Finds the reasons that hold for a variety, the weightiest first. */
final class ReasonReading {
    private static final double WELL = 4;
    private static final int RUNNING = 2;

    private final Outlook outlook;
    private final Winters winters;
    private final BulbPrices prices;
    private final BloomGaps gaps;

    ReasonReading(Journal journal, Outlook outlook, Winters winters, BulbPrices prices) {
        this.outlook = outlook;
        this.winters = winters;
        this.prices = prices;
        this.gaps = new BloomGaps(journal.seasonOf(outlook.day()).previous(), winters);
    }

    /** What takes the worth from a good score stands before it. */
    List<Reason> of(Variety variety) {
        List<Grown> grown = winters.of(variety.id());
        List<Grown> judged = judged(grown);
        Stream<Optional<? extends Reason>> reasons = Stream.of(
                gaps.filledBy(variety.id()),
                floppy(grown),
                failedOnlyAt(judged),
                Tally.of(grown).onlyAt().map(Reason.OnlyAt::new),
                didWell(judged),
                grown.isEmpty() ? Optional.of(new Reason.NeverTried()) : Optional.empty(),
                judged.size() == 1 ? Optional.of(new Reason.OnePotOnly()) : Optional.empty(),
                scented(variety),
                needsNoCold(variety),
                suitsPots(variety),
                prices.last(variety.id()).filter(prices::isCheap).map(Reason.Cheap::new));
        return reasons.flatMap(Optional::stream).<Reason>map(reason -> reason).toList();
    }

    private static List<Grown> judged(Collection<Grown> grown) {
        return grown.stream().filter(one -> one.rating().isPresent()).toList();
    }

    private static Optional<Reason.DidWell> didWell(List<Grown> judged) {
        TreeMap<Season, Double> means = judged.stream()
                .filter(one -> one.score().isPresent())
                .collect(Collectors.groupingBy(
                        Grown::winter,
                        TreeMap::new,
                        Collectors.averagingInt(one -> one.score().orElseThrow())));
        int running = 0;
        for (double mean : means.descendingMap().values()) {
            if (mean < WELL) {
                break;
            }
            running++;
        }
        return running >= RUNNING ? Optional.of(new Reason.DidWell(running)) : Optional.empty();
    }

    private static Optional<Reason.Floppy> floppy(List<Grown> grown) {
        int winters = (int) grown.stream()
                .filter(one -> one.outcome()
                        .filter(outcome -> outcome.failure().signs().contains(Sign.FLOPPY))
                        .isPresent())
                .map(Grown::winter)
                .distinct()
                .count();
        return winters >= RUNNING ? Optional.of(new Reason.Floppy(winters)) : Optional.empty();
    }

    private static Optional<Reason.FailedOnlyAt> failedOnlyAt(List<Grown> judged) {
        List<Grown> failed = judged.stream()
                .filter(one -> one.rating().equals(Optional.of(Rating.FAILED)))
                .toList();
        Set<Optional<Id<Place>>> places = failed.stream().map(Grown::coldAt).collect(Collectors.toSet());
        boolean wasElsewhere = judged.stream().anyMatch(one -> !places.contains(one.coldAt()));
        return failed.size() >= RUNNING && places.size() == 1 && wasElsewhere
                ? failed.get(0).coldAt().map(place -> new Reason.FailedOnlyAt(place, failed.size()))
                : Optional.empty();
    }

    private static Optional<Reason.HasScent> scented(Variety variety) {
        return Optional.of(variety.scent())
                .filter(scent -> scent == Scent.LIGHT || scent == Scent.STRONG)
                .map(Reason.HasScent::new);
    }

    /** A kind that is known and has no figure for its cold, or one of nothing; of another kind nobody knows. */
    private Optional<Reason.NeedsNoCold> needsNoCold(Variety variety) {
        boolean needsCold = outlook.figures()
                .find(variety, FigureName.COLD)
                .filter(cold -> cold.range().high() > 0)
                .isPresent();
        return outlook.figures().isKnown(variety.kind()) && !needsCold
                ? Optional.of(new Reason.NeedsNoCold())
                : Optional.empty();
    }

    private Optional<Reason.SuitsPots> suitsPots(Variety variety) {
        Suiting suiting = outlook.suiting(variety);
        return suiting.standing() == Standing.FIRST || suiting.standing() == Standing.WELL
                ? Optional.of(new Reason.SuitsPots(suiting))
                : Optional.empty();
    }
}
