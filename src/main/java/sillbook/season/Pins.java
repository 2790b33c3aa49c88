// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.JobKind;
import sillbook.model.Proposal.Course;
import sillbook.model.Stage;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Milestone;

/**
 * What of a pot's life is fixed for the reckoning of its dates, and what comes next.
 *
 * @param meant what is meant for it by the plan that was adopted
 */
record Pins(
        PotLife life, PotFigures figures, Optional<ColdNeed> coldNeed, ColdReading reading, Optional<Course> meant) {

    /** Potted, but standing where it is not cold, without any cold that counts; and not seen to grow all the same. */
    boolean wantsCold() {
        boolean outside =
                life.stage() == Stage.WAITING || life.stage() == Stage.COOL_ROOM || life.stage() == Stage.WARM_ROOM;
        return life.isGrowing()
                && outside
                && figures.needsCold()
                && life.cold().daysColdEnough() == 0
                && life.seen().growth().isEmpty()
                && !life.answers().isLeftOut(JobKind.INTO_COLD);
    }

    /** The next stage to begin; empty when none is left. */
    Optional<Milestone> next() {
        if (wantsCold() || (life.stage() == Stage.WAITING && figures.needsCold())) {
            return Optional.of(Milestone.COLD);
        }
        return switch (life.stage()) {
            case WAITING, COLD -> Optional.of(firstRoom());
            case COOL_ROOM -> Optional.of(Milestone.WARM_ROOM);
            case WARM_ROOM -> Optional.of(Milestone.BLOOM);
            case IN_BLOOM -> Optional.of(Milestone.AFTER_BLOOM);
            case AFTER_BLOOM, DONE -> Optional.empty();
        };
    }

    private Milestone firstRoom() {
        boolean usesCoolRoom = figures.varieties().stream()
                .anyMatch(one -> one.need().coolRoom().isPresent());
        return usesCoolRoom ? Milestone.COOL_ROOM : Milestone.WARM_ROOM;
    }

    /** Days out of order are set right: none lies before the one it follows, and potting is the first. */
    Facts facts() {
        Map<Milestone, LocalDate> pins = new EnumMap<>(Milestone.class);
        LocalDate last = LocalDate.MIN;
        for (Map.Entry<Milestone, LocalDate> pin : begun().entrySet()) {
            last = pin.getValue().isAfter(last) ? pin.getValue() : last;
            pins.put(pin.getKey(), last);
        }
        Optional<LocalDate> first = pins.values().stream().findFirst();
        Optional<LocalDate> potted = life.years()
                .woken()
                .or(life::potted)
                .map(Day::likely)
                .map(day -> first.filter(start -> start.isBefore(day)).orElse(day));
        return new Facts(potted, pins, Optional.empty(), 0);
    }

    private Map<Milestone, LocalDate> begun() {
        Map<Milestone, LocalDate> begun = new EnumMap<>(Milestone.class);
        if (life.stage() == Stage.WAITING || wantsCold()) {
            return begun;
        }
        if (figures.needsCold()) {
            begun.put(Milestone.COLD, unbrokenColdSince());
        }
        firstDay(Stage.COOL_ROOM).ifPresent(day -> begun.put(Milestone.COOL_ROOM, day));
        firstDay(Stage.WARM_ROOM).ifPresent(day -> begun.put(Milestone.WARM_ROOM, day));
        firstDay(Stage.IN_BLOOM).ifPresent(day -> begun.put(Milestone.BLOOM, day));
        firstDay(Stage.AFTER_BLOOM).ifPresent(day -> begun.put(Milestone.AFTER_BLOOM, day));
        return begun;
    }

    /** The first day of a stage the pot is in or past, in the part of its life since it last left the cold, or was woken. */
    private Optional<LocalDate> firstDay(Stage stage) {
        if (life.stage().isBefore(stage)) {
            return Optional.empty();
        }
        return sinceCold().stream()
                .filter(phase -> phase.stage() == stage)
                .findFirst()
                .map(phase -> phase.days().start());
    }

    private List<Phase> sinceCold() {
        List<Phase> phases = life.phases();
        int from = phases.size();
        while (from > 0
                && phases.get(from - 1).stage() != Stage.COLD
                && life.years().isPresent(phases.get(from - 1).days().start())) {
            from--;
        }
        return phases.subList(from, phases.size());
    }

    /** The day from which the cold that counts, had it been without a break, would be as long as it is. */
    private LocalDate unbrokenColdSince() {
        return coldCountedTo().minusDays(life.cold().daysColdEnough());
    }

    /** Up to when it was counted: today, or, where it is not cold now, the end of the last cold or the next one's start. */
    private LocalDate coldCountedTo() {
        if (life.stage() != Stage.COLD) {
            List<Phase> after = sinceCold();
            return after.isEmpty() ? reading.today() : after.get(0).days().start();
        }
        LocalDate next = calendar().coldOnOrAfter(reading.today());
        if (next.equals(reading.today()) || lately().filter(ColdPace::isCold).isPresent()) {
            return reading.today();
        }
        return hasItsWeeks() ? calendar().coldEndedBefore(reading.today()) : next;
    }

    /** How the place where it stands has lately been, if it was read; while the cold has not begun, that says nothing of it. */
    private Optional<ColdPace> lately() {
        Optional<LocalDate> began = life.cold().began();
        return began.map(any -> reading.pace(life.stands().map(Stay::place), ColdReading.rooted(began, life.seen())))
                .filter(ColdPace::isRead);
    }

    /** What is to come of its cold; of a pot that stands there and needs any. */
    Optional<ColdAhead> coldAhead() {
        if (life.stage() != Stage.COLD || !figures.needsCold()) {
            return Optional.empty();
        }
        LocalDate countedTo = coldCountedTo();
        ColdPace pace =
                lately().filter(any -> countedTo.equals(reading.today())).orElse(ColdPace.CALENDAR);
        return Optional.of(
                new ColdAhead(countedTo, life.cold().count(), life.cold().reached(), pace));
    }

    private boolean hasItsWeeks() {
        return coldNeed.filter(
                        need -> life.cold().daysColdEnough() >= need.potted().typical())
                .isPresent();
    }

    /** The cold days of the place where it stands. */
    ColdCalendar calendar() {
        return new ColdCalendar(reading.coldDays(life.stands().map(Stay::place)));
    }

    /** How uncertain the day is on which it came to stand as it does. */
    Prospect.Slack slack() {
        return life.standing()
                .begun()
                .map(day -> new Prospect.Slack(
                        Dates.between(day.earliest(), day.likely()), Dates.between(day.likely(), day.latest())))
                .orElse(Prospect.Slack.NONE);
    }
}
