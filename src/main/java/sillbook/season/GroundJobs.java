// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.DayRead;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Window;

/**
 * The routine of a trench over one winter: dug while the ground is open, pots in when it is cold enough at their depth, covered with the first frosts, and what would be
 * due while it is frozen shut lifted before. The order is common practice; the days are those that are foretold, and a thermometer in the trench, or the air's, beats them.
 */
record GroundJobs(
        Journal journal, LocalDate today, GroundForetold ground, Standings standings, Collection<PotNow> pots) {
    /** So many mornings on end it must read {@link GroundForetold#POTS_IN} or less (common practice). */
    private static final int MORNINGS = 3;

    /** A thermometer speaks for today when it was read since. */
    private static final int LATELY_DAYS = 7;

    private static final int DIG_FROM_WEEKS = 6;
    private static final int DIG_BY_WEEKS = 2;
    private static final int POTS_FROM_WEEKS = 2;
    private static final int LIFT_FROM_WEEKS = 2;
    private static final int MILLI = 1000;

    /** Those that are still to be done this winter, in their order. */
    List<Job.OfGround> list() {
        List<Job.OfGround> jobs = new ArrayList<>();
        boolean isUsed = !standing().isEmpty() || cameThisSeason();
        Optional<LocalDate> potsIn = ground.potsIn().filter(day -> isBeforeMidwinter() && !isUsed);
        potsIn.filter(day -> !isDone(Care.DUG)).flatMap(this::dig).ifPresent(jobs::add);
        potsIn.flatMap(this::potsIn).ifPresent(jobs::add);
        cover().ifPresent(jobs::add);
        lift().ifPresent(jobs::add);
        return jobs;
    }

    private Id<Place> place() {
        return ground.trench().place();
    }

    private boolean isBeforeMidwinter() {
        return today.isBefore(ground.covered().coldestDay());
    }

    private List<Id<Pot>> standing() {
        return standings.at(place()).stream().map(life -> life.pot().id()).toList();
    }

    private boolean cameThisSeason() {
        return journal.events().all().stream()
                .filter(this::isOfThisSeason)
                .anyMatch(event -> event.what() instanceof Happening.Moved moved
                        && moved.place().equals(place()));
    }

    private Stream<Event> ofPlace() {
        return journal.history(new Subject.OfPlace(place())).stream().filter(this::isOfThisSeason);
    }

    /** Up to today. */
    private boolean isOfThisSeason(Event event) {
        LocalDate day = event.day().likely();
        Season season = journal.seasonOf(today);
        return !day.isAfter(today) && journal.seasonOf(day).equals(season);
    }

    private boolean isDone(Care care) {
        return ofPlace().anyMatch(event -> event.what() instanceof Happening.Cared cared && cared.care() == care);
    }

    /** Early: the ground is still open, and wet or frozen ground is hard work. */
    private Optional<Job.OfGround> dig(LocalDate potsIn) {
        LocalDate latest = ground.digBefore().map(day -> day.minusDays(1)).orElse(potsIn);
        Window window = window(potsIn.minusWeeks(DIG_FROM_WEEKS), potsIn.minusWeeks(DIG_BY_WEEKS), latest);
        return job(JobKind.DIG_TRENCH, List.of(), window, window.likely(), false);
    }

    /** When the thermometer there says so; before it is read, when it is foretold. */
    private Optional<Job.OfGround> potsIn(LocalDate foretold) {
        LocalDate latest = ground.digBefore().map(day -> day.minusDays(1)).orElse(foretold.plusWeeks(POTS_FROM_WEEKS));
        Window window = window(foretold.minusWeeks(POTS_FROM_WEEKS), foretold, latest);
        Optional<Boolean> isCold = isColdByReading();
        LocalDate on = isCold.map(cold ->
                        cold ? Dates.earlier(today, window.likely()) : Dates.later(today.plusDays(1), window.likely()))
                .orElse(window.likely());
        return job(JobKind.POTS_IN, waiting(), window, on, isCold.isPresent());
    }

    /** Potted, and to go into the cold. */
    private List<Id<Pot>> waiting() {
        return pots.stream()
                .filter(pot -> pot.next()
                        .filter(next -> next.kind() == JobKind.INTO_COLD)
                        .isPresent())
                .map(pot -> pot.life().pot().id())
                .toList();
    }

    /** Whether it was cold enough there on each of the last days read; empty where nobody has read it lately. */
    private Optional<Boolean> isColdByReading() {
        NavigableMap<LocalDate, DayRead> read = journal.daysRead().at(place()).headMap(today, true);
        List<DayRead> last =
                read.descendingMap().values().stream().limit(MORNINGS).toList();
        boolean isLately = !last.isEmpty() && last.get(0).day().isAfter(today.minusDays(LATELY_DAYS));
        return isLately
                ? Optional.of(last.size() == MORNINGS
                        && last.stream().allMatch(day -> day.mean() <= GroundForetold.POTS_IN * MILLI))
                : Optional.empty();
    }

    /** After the first frost, which a thermometer may have seen. */
    private Optional<Job.OfGround> cover() {
        if (ground.trench().cover().isEmpty() || standing().isEmpty() || isDone(Care.COVERED) || !isBeforeMidwinter()) {
            return Optional.empty();
        }
        return ground.firstFrost().flatMap(foretold -> {
            Window window = window(foretold, foretold, ground.digBefore().orElse(foretold.plusWeeks(2)));
            Optional<LocalDate> seen = frostSeen();
            return job(JobKind.COVER_TRENCH, standing(), window, seen.orElse(foretold), seen.isPresent());
        });
    }

    /** The first day of this season on which it froze in the air over the trench, or in it. */
    private Optional<LocalDate> frostSeen() {
        return Stream.concat(Stream.of(place()), ground.trench().outdoors().stream())
                .flatMap(at ->
                        journal.daysRead().at(at).subMap(ground.winter().start(), true, today, true).values().stream())
                .filter(day -> day.lowest() <= 0)
                .map(DayRead::day)
                .min(LocalDate::compareTo);
    }

    /** Pots whose own day falls while it is shut, while it can still be opened; not those that are asked for themselves by now. */
    private Optional<Job.OfGround> lift() {
        return ground.shut().filter(shut -> today.isBefore(shut.start())).flatMap(shut -> {
            List<Id<Pot>> caught =
                    standing().stream().filter(pot -> comesInWhile(shut, pot)).toList();
            Window window = window(
                    shut.start().minusWeeks(LIFT_FROM_WEEKS),
                    shut.start().minusWeeks(1),
                    shut.start().minusDays(1));
            return caught.isEmpty() ? Optional.empty() : job(JobKind.LIFT_POTS, caught, window, window.likely(), false);
        });
    }

    private boolean comesInWhile(DaySpan shut, Id<Pot> id) {
        return pots.stream()
                .filter(pot -> pot.life().pot().id().equals(id))
                .flatMap(pot -> pot.next().stream())
                .anyMatch(next -> next.kind() == JobKind.BRING_IN
                        && (next.due() == Due.SOON || next.due() == Due.LATER)
                        && shut.contains(next.window().likely()));
    }

    private static Window window(LocalDate earliest, LocalDate likely, LocalDate latest) {
        LocalDate middle = Dates.earlier(likely, latest);
        return new Window(Dates.earlier(earliest, middle), middle, latest);
    }

    /** Unless it was left out this season; put off, it falls due on that day. */
    private Optional<Job.OfGround> job(
            JobKind kind, List<Id<Pot>> pots, Window window, LocalDate on, boolean isByReading) {
        Answers answers = Answers.of(ofPlace().toList(), today);
        if (answers.isLeftOut(kind)) {
            return Optional.empty();
        }
        Optional<Job.Delay> delay =
                answers.delay(kind).filter(put -> put.until().isAfter(on));
        LocalDate day = delay.map(Job.Delay::until).orElse(on);
        return Optional.of(new Job.OfGround(kind, place(), pots, window, day, Due.on(day, today), isByReading, delay));
    }
}
