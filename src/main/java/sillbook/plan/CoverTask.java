// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Wish;
import sillbook.reckon.cover.ColdStay;
import sillbook.reckon.cover.DayWish;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Pull;
import sillbook.reckon.cover.Room;
import sillbook.reckon.cover.Task;
import sillbook.reckon.dates.DaySpan;

/** A season as the search for the best plan takes it, in numbers; and what it finds, as pots again. Days are counted from the season's first. */
final class CoverTask {
    private static final int DAYS_IN_WEEK = 7;

    private final Planning planning;
    private final Rule rule;
    private final DaySpan days;
    private final List<Candidate> candidates = new ArrayList<>();
    private final List<PotGroup> groups = new ArrayList<>();

    CoverTask(Planning planning, Rule rule) {
        this.planning = planning;
        this.rule = rule;
        this.days = planning.days();
        for (Candidate candidate : planning.candidates()) {
            group(candidate).ifPresent(group -> {
                candidates.add(candidate);
                groups.add(group);
            });
        }
    }

    /** Empty where nothing can be brought in, or there is no room of any sort to flower in. */
    Optional<Task> task() {
        return groups.isEmpty() || planning.rooms().isEmpty()
                ? Optional.empty()
                : Optional.of(new Task(season(), rooms(planning.rooms()), rooms(planning.colds()), groups, wishes()));
    }

    private sillbook.reckon.cover.Season season() {
        DaySpan hull = WishedDays.hull(planning.wishes(), rule);
        return new sillbook.reckon.cover.Season(day(hull.start()), day(hull.endExclusive()) - 1);
    }

    private int day(LocalDate date) {
        return Dates.between(days.start(), date);
    }

    private static List<Room> rooms(List<Berth> berths) {
        return berths.stream()
                .map(berth -> berth.room().map(Room::of).orElse(Room.ENDLESS))
                .toList();
    }

    private List<DayWish> wishes() {
        List<DayWish> wishes = new ArrayList<>();
        DaySpan hull = WishedDays.hull(planning.wishes(), rule);
        for (Wish wish : planning.wishes()) {
            List<Integer> suited = suited(wish);
            if (!wish.asks().isEveryDay() && !suited.isEmpty()) {
                WishedDays.about(wish, hull)
                        .forEach(day ->
                                wishes.add(new DayWish(day(day), wish.asks().pots(), suited)));
            }
        }
        return wishes;
    }

    private List<Integer> suited(Wish wish) {
        return IntStream.range(0, candidates.size())
                .filter(number -> wish.asks().suits(candidates.get(number).variety()))
                .boxed()
                .toList();
    }

    private Optional<PotGroup> group(Candidate candidate) {
        return candidate.isOpen()
                ? new ColdChoice(candidate, planning).best().map(choice -> group(candidate, choice))
                : Optional.of(settled(candidate, candidate.settled().orElseThrow()));
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

    private PotGroup settled(Candidate candidate, Candidate.Settled settled) {
        int in = day(settled.course().in());
        List<Integer> site = IntStream.range(0, planning.rooms().size())
                .filter(room -> settled.course()
                        .room()
                        .equals(Optional.of(planning.rooms().get(room).id())))
                .boxed()
                .toList();
        return new PotGroup(
                in,
                in,
                List.of(Math.max(0, day(settled.flowers().start()) - in)),
                (int) Math.max(1, settled.flowers().days()),
                1,
                1,
                site,
                Optional.empty());
    }

    /** The pots of a plan that was found; those that are there and not in it are brought in on the first day that suits them. */
    List<Proposal> proposals(List<Pull> pulls) {
        Placing placing = new Placing(planning, rule);
        List<Proposal> found = new ArrayList<>();
        boolean[] used = new boolean[candidates.size()];
        for (Pull pull : pulls) {
            used[pull.group()] = true;
            found.add(proposal(pull, placing));
        }
        for (int number = 0; number < used.length; number++) {
            if (!used[number] && candidates.get(number).pot().isPresent()) {
                found.add(left(candidates.get(number), placing));
            }
        }
        return Placing.inOrder(found);
    }

    private Proposal proposal(Pull pull, Placing placing) {
        Candidate candidate = candidates.get(pull.group());
        if (!candidate.isOpen()) {
            return placing.settled(candidate);
        }
        Optional<Id<Place>> cold = pull.cold().isPresent()
                ? Optional.of(planning.colds().get(pull.cold().getAsInt()).id())
                : Optional.empty();
        Id<Place> room = planning.rooms().get(pull.site()).id();
        return placing.place(candidate, days.start().plusDays(pull.day()), cold, Optional.of(room));
    }

    private Proposal left(Candidate candidate, Placing placing) {
        return candidate.isOpen()
                ? placing.place(candidate, candidate.in(days).orElseThrow().start())
                : placing.settled(candidate);
    }
}
