// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import sillbook.change.Answer;
import sillbook.change.CareFor;
import sillbook.change.Check;
import sillbook.change.Close;
import sillbook.change.Flower;
import sillbook.change.Move;
import sillbook.change.Plant;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Impression;
import sillbook.model.JobKind;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Subject;

/** Answers the lines of a day where they stand: mostly does them, now and then puts one off, and lets some wait. */
final class Grower {
    private final LivedWinter winter;
    private final Random random;
    private final LocalDate day;
    private final Outlook outlook;
    private final boolean isLazy;

    Grower(LivedWinter winter, Random random, LocalDate day, Outlook outlook) {
        this.winter = winter;
        this.random = random;
        this.day = day;
        this.outlook = outlook;
        this.isLazy = random.nextInt(6) == 0;
    }

    /** Lives the day, and gives the lines that were answered. */
    List<Asked> live() {
        winter.pottingsOf(day).forEach(potUp -> winter.does(day, potUp));
        List<Asked> answered = new ArrayList<>();
        Asked.of(outlook.today()).stream().filter(this::wantsTo).forEach(asked -> {
            asked.answer(this);
            answered.add(asked);
        });
        flowers();
        accidents();
        return answered;
    }

    private boolean wantsTo(Asked asked) {
        int chance = asked.mayWait() ? 25 : 85;
        return random.nextInt(100) < (isLazy ? chance / 3 : chance);
    }

    void answer(Job.OfPots job) {
        if (random.nextInt(8) == 0 && job.due() != Due.LATE) {
            putOff(subjects(job.pots()), job.kind());
        } else {
            carryOut(job, some(job));
        }
    }

    /** A job that may wait is often done to a few pots only, so that something is always in flower. */
    private List<Id<Pot>> some(Job.OfPots job) {
        List<Id<Pot>> pots = job.pots();
        boolean isFew = job.due() == Due.READY && random.nextInt(3) > 0;
        return isFew ? pots.subList(0, Math.min(pots.size(), 1 + random.nextInt(10))) : pots;
    }

    private void carryOut(Job.OfPots job, List<Id<Pot>> pots) {
        switch (job.kind()) {
            case POT_UP ->
                winter.does(
                        day, new Plant(pots, Optional.of(place(job).orElseGet(() -> serving(Stage.COLD))), today()));
            case INTO_COLD, MOVE_TO_WARMTH, KEEP_COOL_IN_BLOOM -> move(job, pots);
            case BRING_IN -> bringIn(job, pots);
            case WATCH_FOR_FLOWER -> winter.does(day, flower(pots, BloomPoint.FIRST_FLOWER));
            case PAST_BLOOM -> winter.does(day, flower(pots, BloomPoint.PAST_BLOOM));
            case WRITE_OUTCOME -> pots.forEach(this::outcome);
            case AFTERCARE -> aftercare(pots);
            case FEED -> care(pots, Care.FED);
            case PUT_OUTDOORS -> care(pots, Care.OUTDOORS);
            case TAKE_INDOORS -> care(pots, Care.BROUGHT_IN);
            case START_REST -> care(pots, Care.RESTED);
            case WAKE -> care(pots, Care.WOKEN);
            case REPOT -> care(pots, Care.REPOTTED);
            case CHECK, DAILY_CARE, DIG_TRENCH, POTS_IN, COVER_TRENCH, LIFT_POTS ->
                throw new AssertionError("a job of a place: " + job);
        }
    }

    private void care(List<Id<Pot>> pots, Care care) {
        winter.does(day, new CareFor(pots, care, today()));
    }

    private void bringIn(Job.OfPots job, List<Id<Pot>> pots) {
        boolean mayCome = job.readiness()
                .filter(ready -> ready.verdict() != Verdict.MAY_COME_IN)
                .isEmpty();
        if (mayCome) {
            move(job, pots);
        } else {
            Map<Id<Pot>, Findings> found = new LinkedHashMap<>();
            pots.forEach(pot -> found.put(
                    pot, winter.look(outlook.pot(pot)).withRoots(anyOf(Findings.Roots.SHOWING, Findings.Roots.NONE))));
            winter.does(day, new Check(found, Optional.empty(), today()));
        }
    }

    private void move(Job.OfPots job, List<Id<Pot>> pots) {
        Stage stage = job.route().stage();
        winter.does(day, new Move(pots, place(job).orElseGet(() -> serving(stage)), stage, today()));
    }

    private static Optional<Id<Place>> place(Job.OfPots job) {
        return job.route().to().map(Destination::place);
    }

    /** Where everything is full, something gives way. */
    private Id<Place> serving(Stage stage) {
        Stage wanted = stage == Stage.IN_BLOOM ? Stage.COOL_ROOM : stage;
        return winter.journal().places().all().stream()
                .filter(place -> place.serves() == wanted)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private void aftercare(List<Id<Pot>> pots) {
        if (random.nextInt(4) == 0) {
            winter.does(day, new CareFor(pots, anyOf(Care.PLANTED_OUT, Care.LEAVES_CUT), today()));
        } else {
            winter.does(day, new Close(pots, anyOf(End.FINISHED, End.USED_UP, End.GIVEN), "", today()));
        }
    }

    private void outcome(Id<Pot> pot) {
        winter.does(
                day,
                new WriteDown(new Outcome(
                        winter.ids().next(),
                        pot,
                        Optional.empty(),
                        today(),
                        Optional.of(1 + random.nextInt(5)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Failure.NONE,
                        Impression.NONE,
                        "")));
    }

    void answer(Job.Round round) {
        Subject place = new Subject.OfPlace(round.place());
        switch (random.nextInt(12)) {
            case 0 -> putOff(List.of(place), JobKind.CHECK);
            case 1 -> winter.does(day, new Answer(List.of(place), JobKind.CHECK, Optional.empty(), "no time"));
            default -> look(round.pots(), Optional.of(round.place()));
        }
    }

    /** No winter of these has ground that is written down. */
    void answer(Job.OfGround job) {
        putOff(List.of(new Subject.OfPlace(job.place())), job.kind());
    }

    void answer(Job.DailyCare care) {
        look(care.pots(), Optional.empty());
    }

    private void look(List<Id<Pot>> pots, Optional<Id<Place>> round) {
        Map<Id<Pot>, Findings> found = new LinkedHashMap<>();
        pots.stream().filter(winter::isThere).forEach(pot -> found.put(pot, winter.look(outlook.pot(pot))));
        if (!found.isEmpty()) {
            winter.does(day, new Check(found, round, today()));
        }
    }

    private void putOff(List<Subject> subjects, JobKind kind) {
        LocalDate until = day.plusDays(1 + random.nextInt(7));
        winter.does(day, new Answer(subjects, kind, Optional.of(until), ""));
    }

    /** What opens is written down, whether a line asked for it or not. */
    private void flowers() {
        List<Id<Pot>> open = growing()
                .filter(pot -> winter.flowers(pot, day))
                .map(pot -> pot.life().pot().id())
                .toList();
        if (!open.isEmpty() && random.nextInt(3) > 0) {
            winter.does(day, flower(open, BloomPoint.FIRST_FLOWER));
        }
    }

    /** A pot is dropped, or given to a neighbour. */
    private void accidents() {
        if (random.nextInt(25) == 0) {
            growing()
                    .skip(random.nextInt(20))
                    .findFirst()
                    .ifPresent(pot -> winter.does(
                            day,
                            new Close(
                                    List.of(pot.life().pot().id()),
                                    anyOf(End.BROKEN, End.GIVEN, End.SOLD, End.FAILED),
                                    "",
                                    today())));
        }
    }

    /** As they stood in the morning, but for those that are gone since. */
    private Stream<PotNow> growing() {
        return outlook.pots(winter.season()).stream()
                .filter(pot -> pot.life().isGrowing())
                .filter(pot -> winter.isThere(pot.life().pot().id()));
    }

    @SafeVarargs
    private <T> T anyOf(T... some) {
        return some[random.nextInt(some.length)];
    }

    private Flower flower(List<Id<Pot>> pots, BloomPoint point) {
        return new Flower(pots, point, Optional.empty(), today());
    }

    private static List<Subject> subjects(List<Id<Pot>> pots) {
        return pots.stream().<Subject>map(Subject.OfPot::new).toList();
    }

    private Day today() {
        return Day.on(day);
    }
}
