// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.SeasonPlan.Rule;
import sillbook.reckon.cover.ColdStay;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.dates.Dates;

/** Candidates as the search for the best plan takes them, each for itself; it finds by itself which are alike. */
record PotGroups(Planning planning, Rule rule) {
    private static final int DAYS_IN_WEEK = 7;

    private int day(LocalDate date) {
        return Dates.between(planning.days().start(), date);
    }

    /** Empty where it cannot come in on any day. */
    Optional<PotGroup> of(Candidate candidate) {
        return candidate.isOpen()
                ? new ColdChoice(candidate, planning).best().map(choice -> group(candidate, choice))
                : Optional.of(settled(candidate.settled().orElseThrow()));
    }

    private PotGroup group(Candidate candidate, ColdChoice.Best choice) {
        int earliest = day(choice.in().start());
        int latest = day(choice.in().endExclusive()) - 1;
        return new PotGroup(
                earliest,
                latest,
                PotGroup.steady(earliest, latest, candidate.forcing().toFlower().typical()),
                candidate.forcing().daysInBloom(),
                1,
                1,
                List.of(),
                stay(candidate, choice));
    }

    private Optional<ColdStay> stay(Candidate candidate, ColdChoice.Best choice) {
        int early = rule.pottingDays().isEmpty() ? 0 : DAYS_IN_WEEK - 1;
        LocalDate from = candidate.cold().map(Candidate.InCold::potted).orElse(candidate.readyFrom());
        int atMost = candidate.cold().isPresent()
                ? days(candidate, choice)
                : candidate.forcing().usualCold() + early;
        return choice.colds().isEmpty()
                ? Optional.empty()
                : Optional.of(new ColdStay(Math.min(day(from), day(choice.in().start())), atMost, choice.colds()));
    }

    private static int days(Candidate candidate, ColdChoice.Best choice) {
        return Dates.between(
                candidate.cold().map(Candidate.InCold::potted).orElseThrow(),
                choice.in().endExclusive());
    }

    private PotGroup settled(Candidate.Settled settled) {
        int in = day(settled.course().in());
        return PotGroup.of(
                in,
                in,
                Math.max(0, day(settled.flowers().start()) - in),
                (int) Math.max(1, settled.flowers().days()),
                1);
    }
}
