// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Wish;
import sillbook.reckon.cover.DayWish;
import sillbook.reckon.cover.Evaluation;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Pull;
import sillbook.reckon.cover.Room;
import sillbook.reckon.cover.Task;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/** A season as the search for the best plan takes it, in numbers; and what it finds, as pots again. Days are counted from the season's first. */
final class CoverTask {
    /** As many as the search takes on. */
    private static final int MOST_WISHES = 100;

    private final Planning planning;
    private final Rule rule;
    private final DaySpan days;
    private final WishedDays wishedDays;
    private final List<Candidate> candidates = new ArrayList<>();
    private final List<PotGroup> groups = new ArrayList<>();
    private final List<Pull> fixed = new ArrayList<>();

    CoverTask(Planning planning, Rule rule) {
        this.planning = planning;
        this.rule = rule;
        this.days = planning.days();
        PotGroups potGroups = new PotGroups(planning, rule);
        for (Candidate candidate : planning.candidates()) {
            potGroups.of(candidate).ifPresent(group -> {
                if (!candidate.isOpen()) {
                    fix(group, where(candidate.settled().orElseThrow()));
                } else {
                    groups.add(group);
                }
                candidates.add(candidate);
            });
        }
        wishedDays = WishedDays.of(planning, rule);
        wishedDays.unwished().forEach(this::fill);
        planning.ended().forEach(this::fillEnded);
    }

    private void fix(PotGroup group, int site) {
        fixed.add(new Pull(groups.size(), group.earliest(), site, OptionalInt.empty()));
        groups.add(group);
    }

    /** Where a pot stands that is out of the cold: in one of the rooms, or somewhere else, where nothing is brought in. */
    private int where(Candidate.Settled settled) {
        return IntStream.range(0, planning.rooms().size())
                .filter(room -> settled.course()
                        .room()
                        .equals(Optional.of(planning.rooms().get(room).id())))
                .findFirst()
                .orElse(elsewhere());
    }

    private int elsewhere() {
        return planning.rooms().size();
    }

    /** A stretch for which nobody wished counts as in bloom: a pot that is not there fills it. */
    private void fill(DaySpan stretch) {
        int first = day(stretch.start());
        fix(PotGroup.of(first, first, 0, (int) stretch.days(), 1), elsewhere());
    }

    /** What was in bloom of a pot whose winter is over. */
    private void fillEnded(Candidate ended) {
        Optional.of(ended.settled().orElseThrow().flowers())
                .filter(flowers -> !flowers.isEmpty())
                .ifPresent(this::fill);
    }

    /** Whether all that is wished for is asked of the search, which knows no rooms but those where pots are brought to flower. */
    boolean asksAll() {
        return planning.wishes().stream()
                .allMatch(wish -> wish.asks().room().isEmpty() || !sites(wish).isEmpty());
    }

    private List<Integer> sites(Wish wish) {
        return IntStream.range(0, planning.rooms().size())
                .filter(room -> wish.asks()
                        .room()
                        .equals(Optional.of(planning.rooms().get(room).id())))
                .boxed()
                .toList();
    }

    /** Pots that are in already, or only fill days for which nobody wished. */
    List<Pull> fixed() {
        return fixed;
    }

    /** How many of the pots of a plan are none. */
    int fillers() {
        return groups.size() - candidates.size();
    }

    /** Empty where nothing can be brought in, or there is no room of any sort to flower in. */
    Optional<Task> task() {
        return candidates.isEmpty() || planning.rooms().isEmpty()
                ? Optional.empty()
                : Optional.of(task(wishes(wishedDays::asked)));
    }

    private Task task(List<DayWish> wishes) {
        return new Task(season(), sites(), rooms(planning.colds()), groups, wishes);
    }

    private List<Room> sites() {
        List<Room> sites = new ArrayList<>(rooms(planning.rooms()));
        sites.add(Room.of(0));
        return sites;
    }

    private sillbook.reckon.cover.Season season() {
        DaySpan hull = wishedDays.hull();
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

    /** What wishes ask of single days, dated ones first; that something is in bloom on each of some days is asked by the season itself. */
    private List<DayWish> wishes(Function<Wish, List<LocalDate>> days) {
        List<DayWish> asked = planning.wishes().stream()
                .sorted(Comparator.comparing(wish -> wish.asks().isEveryDay()))
                .flatMap(wish -> days.apply(wish).stream().flatMap(day -> wish(wish, day).stream()))
                .toList();
        return asked.subList(0, Math.min(MOST_WISHES, asked.size()));
    }

    private Optional<DayWish> wish(Wish wish, LocalDate day) {
        List<Integer> suited = suited(wish);
        return suited.isEmpty()
                ? Optional.empty()
                : Optional.of(new DayWish(day(day), wish.asks().pots(), suited, sites(wish)));
    }

    /** How many pots wishes lack on their own days with the pots of a plan. */
    int lacking(Plan plan) {
        return Evaluation.of(task(wishes(wishedDays::own)), plan.pulls())
                        .tally()
                        .unmet()
                + unsuited();
    }

    /** How many of these any plan lacks, as no bulbs suit them. */
    int unsuited() {
        return planning.wishes().stream()
                .filter(wish -> !wishedDays.own(wish).isEmpty() && suited(wish).isEmpty())
                .mapToInt(wish -> wish.asks().pots())
                .sum();
    }

    private List<Integer> suited(Wish wish) {
        return IntStream.range(0, candidates.size())
                .filter(number -> wish.asks().suits(candidates.get(number).variety()))
                .boxed()
                .toList();
    }

    /** The pots of a plan that was found; those that are there and not in it are brought in on the first day that suits them. */
    List<Proposal> proposals(List<Pull> pulls) {
        Placing placing = new Placing(planning, rule);
        List<Proposal> found = new ArrayList<>();
        boolean[] used = new boolean[candidates.size()];
        for (Pull pull : pulls) {
            if (pull.group() < candidates.size()) {
                used[pull.group()] = true;
                found.add(proposal(pull, placing));
            }
        }
        for (int number = 0; number < used.length; number++) {
            if (!used[number] && candidates.get(number).cold().isPresent()) {
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
        return placing.place(candidate, candidate.in(days).orElseThrow().start());
    }
}
