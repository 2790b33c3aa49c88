// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureName;
import sillbook.model.Batch;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;

/** What flowers, and what comes into flower next. Pots of a batch that agree are one. */
final class Flowers {
    private final Collection<PotNow> pots;
    private final Batches batches;
    private final Set<Id<Pot>> asked = new HashSet<>();
    private final LocalDate today;

    /**
     * The flowers of some pots.
     *
     * @param pots by label
     * @param due what else is asked today
     */
    Flowers(Collection<PotNow> pots, Batches batches, List<Job.OfPots> due, LocalDate today) {
        this.pots = pots;
        this.batches = batches;
        this.today = today;
        due.forEach(job -> asked.addAll(job.pots()));
    }

    /**
     * The longest in flower first; what is asked today whether it is past stands there, and not here, too. What is asked for its
     * score blooms all the same, and stands in both.
     */
    List<Today.Blooming> inBloom() {
        Map<List<Object>, List<PotNow>> groups = new LinkedHashMap<>();
        pots.stream()
                .filter(pot -> pot.life().stage() == Stage.IN_BLOOM && !isAskedToday(pot))
                .sorted(Comparator.comparing(Flowers::began))
                .forEach(pot -> groups.computeIfAbsent(
                                List.of(owner(pot), began(pot), pot.next().map(Job.OfPots::kind)),
                                like -> new ArrayList<>())
                        .add(pot));
        return groups.values().stream().map(this::blooming).toList();
    }

    private Today.Blooming blooming(List<PotNow> alike) {
        PotNow first = alike.get(0);
        List<Job.OfPots> jobs = batches.together(
                alike.stream().flatMap(pot -> pot.next().stream()).toList());
        return new Today.Blooming(
                ids(alike),
                (int) ChronoUnit.DAYS.between(began(first), today) + 1,
                first.figures().find(FigureName.IN_BLOOM).map(figure ->
                        (int) Math.round(figure.range().typical())),
                jobs.stream().filter(job -> !asked.containsAll(job.pots())).findFirst());
    }

    private static boolean isAskedToday(PotNow pot) {
        return pot.next()
                .filter(job -> job.due() == Due.TODAY && job.kind() != JobKind.WRITE_OUTCOME)
                .isPresent();
    }

    private static LocalDate began(PotNow pot) {
        return pot.life().standing().begun().map(Day::likely).orElse(LocalDate.MIN);
    }

    /** The likeliest to open first. */
    List<Today.Opening> opening() {
        Map<List<Object>, List<PotNow>> groups = new LinkedHashMap<>();
        for (PotNow pot : pots) {
            Optional<Window> firstFlower =
                    firstFlower(pot).filter(window -> pot.life().isGrowing());
            firstFlower.ifPresent(
                    window -> groups.computeIfAbsent(List.of(owner(pot), window), like -> new ArrayList<>())
                            .add(pot));
        }
        return groups.values().stream()
                .map(alike ->
                        new Today.Opening(ids(alike), firstFlower(alike.get(0)).orElseThrow()))
                .sorted(Comparator.comparing(opening -> opening.firstFlower().likely()))
                .toList();
    }

    private static Optional<Window> firstFlower(PotNow pot) {
        return pot.ahead().stream()
                .filter(ahead -> ahead.stage() == Stage.IN_BLOOM)
                .map(Ahead::window)
                .findFirst();
    }

    /** What a pot may be drawn together with: its batch, or nothing but itself. */
    private Object owner(PotNow pot) {
        Optional<Id<Batch>> batch = batches.of(pot.life().pot()).map(BatchShare::batch);
        return batch.isPresent() ? batch.get() : pot.life().pot().id();
    }

    private static List<Id<Pot>> ids(List<PotNow> pots) {
        return pots.stream().map(pot -> pot.life().pot().id()).toList();
    }
}
