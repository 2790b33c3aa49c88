// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.PastWindows;
import sillbook.model.Season;
import sillbook.reckon.stages.Widening;
import sillbook.season.Ahead;
import sillbook.season.Figures;

/**
 * Settles for a season how true the windows before it were, which says by how much its own are widened.
 *
 * <p>Only windows of learnt lengths are asked: they promise to hold the day 8 times in 10, the published ones promise no
 * share.
 */
public final class Settling {
    /**
     * So many winters back what was foretold is asked. More pots have taught their lengths since, so that older windows say
     * little of those to come; a judgement of ours.
     */
    private static final int WINTERS = 3;

    /** A window of one day reaches half a day to either side. */
    private static final double SHORTEST_HALF = 0.5;

    private static final double HUNDREDTHS = 100;

    private Settling() {}

    /**
     * What is to be written when something is foretold on a day; empty when that is settled for its season, or no window of the
     * winters before has anything to teach.
     *
     * @param kept all windows that were kept; asked for only where there may be some
     */
    public static Optional<PastWindows> due(
            Journal journal, LocalDate today, Supplier<List<KeptWindow>> kept, Ids ids) {
        Season season = journal.seasonOf(today);
        boolean isFirst =
                journal.pots().all().stream().noneMatch(pot -> pot.season().isBefore(season));
        if (isFirst || journal.pastWindows(season).isPresent()) {
            return Optional.empty();
        }
        Truth before = Foretellings.of(journal, kept.get(), today).before(season, WINTERS);
        return Optional.of(widening(journal, before.all()))
                .filter(widening -> widening.held().of() > 0)
                .map(widening -> new PastWindows(
                        ids.next(),
                        season,
                        widening.held().hits(),
                        widening.held().of(),
                        (int) Math.round(HUNDREDTHS * widening.reach())));
    }

    private static Widening widening(Journal journal, Collection<Foretelling> all) {
        return Widening.of(all.stream()
                .filter(one -> Ahead.isLearnt(one.window()))
                .map(one -> halves(journal, one))
                .toList());
    }

    /** How far the day lay from the likely one, in halves of the window as it was before it was widened. */
    private static double halves(Journal journal, Foretelling one) {
        KeptWindow window = one.window();
        LocalDate end = one.came().isBefore(window.likely()) ? window.earliest() : window.latest();
        double by = Figures.widening(journal, window.madeOn()).by();
        return apart(one.came(), window.likely()) / Math.max(SHORTEST_HALF, apart(end, window.likely()) / by);
    }

    private static double apart(LocalDate one, LocalDate other) {
        return Math.abs(ChronoUnit.DAYS.between(one, other));
    }
}
