// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;

/** The plants that live on in their pots from season to season. */
public final class LivingOn {
    private final Journal journal;
    private final Figures figures;
    private final List<PotLife> lives;
    private final LocalDate today;
    private final Season season;

    /**
     * Knows the plants among these pots.
     *
     * @param lives of this season and of earlier ones that are not done, by label
     */
    LivingOn(Journal journal, Figures figures, List<PotLife> lives, LocalDate today) {
        this.journal = journal;
        this.figures = figures;
        this.lives = lives;
        this.today = today;
        this.season = journal.seasonOf(today);
    }

    /** Those of earlier seasons that are still growing, by label. */
    public List<Pot> pots() {
        return lives.stream()
                .filter(life -> life.isGrowing() && life.pot().season().isBefore(season) && figures.livesOn(life.pot()))
                .map(PotLife::pot)
                .toList();
    }

    /** Those made before a season that lived in it, too; in one that is to come nobody knows yet. */
    Stream<Pot> in(Season of) {
        return season.isBefore(of)
                ? Stream.empty()
                : journal.pots().all().stream()
                        .filter(pot -> pot.season().isBefore(of) && figures.livesOn(pot))
                        .filter(pot -> isIn(of, History.read(journal, pot, today)));
    }

    /** Growing still, or done since that season began, after another winter than its first. */
    private boolean isIn(Season of, PotLife life) {
        LocalDate start = of.firstDay(journal.settings().seasonStart());
        Optional<LocalDate> begun = life.standing().begun().map(Day::likely);
        boolean endedLater = life.stage() == Stage.DONE
                && life.years().number() > 1
                && begun.filter(day -> !day.isBefore(start)).isPresent();
        return life.isGrowing() || endedLater;
    }

    /** The season a pot is looked up in: its own, or the present one for a plant that lives on. */
    public Season seasonOf(Pot pot) {
        return pot.season().isBefore(season) && pots().contains(pot) ? season : pot.season();
    }

    /** What is written of how a pot did in its present winter: of the whole, and of each variety that was judged by itself. */
    public List<Outcome> outcomes(Id<Pot> pot) {
        return years(pot).present(journal.outcomesOf(pot));
    }

    /** The same of the winter in which a day lies. */
    public List<Outcome> outcomes(Id<Pot> pot, LocalDate day) {
        return years(pot).of(day, journal.outcomesOf(pot));
    }

    private Years years(Id<Pot> pot) {
        return lives.stream()
                .filter(life -> life.pot().id().equals(pot))
                .findFirst()
                .orElseGet(() -> History.read(journal, journal.pots().get(pot), today))
                .years();
    }
}
