// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is meant to flower in a season, pot by pot. Several stand side by side until one is adopted.
 *
 * @param name short, as {@code A}; unique within the season
 * @param rule what it was made by
 * @param pots in the order in which they are brought in
 * @param search what is known of how good it is, of one that was searched for and not changed by hand since
 * @param adopted the day on which its pots were made
 * @param note in the grower's words; may be empty
 */
public record SeasonPlan(
        Id<SeasonPlan> id,
        Season season,
        String name,
        Rule rule,
        List<Proposal> pots,
        Optional<Search> search,
        Optional<LocalDate> adopted,
        String note)
        implements Entity<SeasonPlan> {

    public SeasonPlan {
        pots = List.copyOf(pots);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a plan has a name");
        }
    }

    /**
     * So many pots every so many days, and what hands and days there are for potting.
     *
     * @param pots brought in together
     * @param everyDays from one time to the next
     * @param from first day of bringing in
     * @param to last day of bringing in
     * @param pottedADay most pots that are potted on one day
     * @param pottingDays days of the week on which pots are potted; all when none is named
     */
    public record Rule(
            int pots, int everyDays, LocalDate from, LocalDate to, int pottedADay, Set<DayOfWeek> pottingDays) {
        public Rule {
            pottingDays = Sorted.copyOf(pottingDays);
            if (pots < 1 || everyDays < 1 || pottedADay < 1) {
                throw new IllegalArgumentException(
                        pots + " pots every " + everyDays + " days, " + pottedADay + " a day");
            }
            if (from.isAfter(to)) {
                throw new IllegalArgumentException("a rule that ends before it begins: " + from + " to " + to);
            }
        }

        /** Whether pots are potted on a day. */
        public boolean isPottingDay(LocalDate day) {
            return pottingDays.isEmpty() || pottingDays.contains(day.getDayOfWeek());
        }
    }

    /**
     * How good a plan that was searched for is at most. Of each number, what no plan can go below that does as well at those before it.
     *
     * @param unmet pots that wishes lack on their days
     * @param gapDays days wished for without anything in bloom
     * @param pots brought in
     */
    public record Search(int unmet, int gapDays, int pots) {}

    /** The plans for a season, by name. */
    public static List<SeasonPlan> of(Season season, Journal journal) {
        return journal.seasonPlans().all().stream()
                .filter(plan -> plan.season().equals(season))
                .sorted(Comparator.comparing(SeasonPlan::name))
                .toList();
    }

    /** The plan for a season of that name; how its letters are written makes no difference. */
    public static Optional<SeasonPlan> called(Season season, String name, Journal journal) {
        return of(season, journal).stream()
                .filter(plan -> plan.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** The plan that a season goes by. */
    public static Optional<SeasonPlan> adopted(Season season, Journal journal) {
        return of(season, journal).stream()
                .filter(plan -> plan.adopted().isPresent())
                .findFirst();
    }

    /**
     * The season that is planned on a day: the one bulbs are chosen for, but while that has no plan and the season under way goes by one,
     * the season under way.
     */
    public static Season plannedOn(LocalDate day, Journal journal) {
        Season coming = journal.chosenFor(day);
        Season now = journal.seasonOf(day);
        boolean isOnlyNow =
                of(coming, journal).isEmpty() && adopted(now, journal).isPresent();
        return isOnlyNow ? now : coming;
    }

    /** The same plan with other pots, changed by hand. */
    public SeasonPlan withPots(List<Proposal> changed) {
        return new SeasonPlan(id, season, name, rule, changed, Optional.empty(), adopted, note);
    }

    /** The same plan with the pots that were found for its rule, and what is known of them. */
    public SeasonPlan found(List<Proposal> best, Search known) {
        return new SeasonPlan(id, season, name, rule, best, Optional.of(known), Optional.empty(), note);
    }

    /** The same as another plan, beside it: not the one the season goes by. */
    public SeasonPlan unadopted(Id<SeasonPlan> other, String called) {
        return new SeasonPlan(other, season, called, rule, pots, search, Optional.empty(), note);
    }

    /** The same plan, adopted on a day and about the pots that were made. */
    public SeasonPlan adoptedOn(LocalDate day, List<Proposal> made) {
        return new SeasonPlan(id, season, name, rule, made, search, Optional.of(day), note);
    }

    /** The same plan, no longer adopted, its pots that go with that proposed again. */
    public SeasonPlan laidAside(Collection<Id<Pot>> gone) {
        List<Proposal> proposed = pots.stream()
                .map(one -> one.pot().filter(gone::contains).isPresent() ? one.about(Optional.empty()) : one)
                .toList();
        return new SeasonPlan(id, season, name, rule, proposed, search, Optional.empty(), note);
    }

    /** The same plan, no longer about these pots. */
    public SeasonPlan without(Collection<Id<Pot>> gone) {
        List<Proposal> left = pots.stream()
                .filter(proposal -> proposal.pot().filter(gone::contains).isEmpty())
                .toList();
        return new SeasonPlan(id, season, name, rule, left, search, adopted, note);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return pots.stream().flatMap(Proposal::refersTo);
    }
}
