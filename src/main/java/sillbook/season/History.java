// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.Closed;
import sillbook.model.Happening.End;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;

/**
 * Reads the events of one pot, in order, into its life.
 *
 * <p>A flower does not unhappen: a pot that has bloomed is carried from room to room without a change of its stage.
 */
final class History implements Happening.Cases<History> {
    private final Journal journal;
    private final Pot pot;
    private final LocalDate today;
    private final List<Phase> phases = new ArrayList<>();
    private final List<Noted<Care>> cares = new ArrayList<>();
    private final List<Noted<String>> notes = new ArrayList<>();
    private final Set<Stage> uncertain = EnumSet.noneOf(Stage.class);
    private Day now = Day.on(LocalDate.EPOCH);
    private Stage stage = Stage.WAITING;
    private Optional<Day> since = Optional.empty();
    private Optional<Stay> stay = Optional.empty();
    private Optional<LocalDate> phaseBegan = Optional.empty();
    private Optional<Day> potted = Optional.empty();
    private Closed end = new Closed(End.FINISHED, "");
    private Seen seen = Seen.NOTHING;
    private Bloom bloom = Bloom.NONE;
    private Years years = Years.FIRST;
    private Answers answers = Answers.NONE;
    private Optional<Noted<String>> display = Optional.empty();

    private History(Journal journal, Pot pot, LocalDate today) {
        this.journal = journal;
        this.pot = pot;
        this.today = today;
    }

    /** The life of a pot up to a day; what is written for later days is not read. */
    static PotLife read(Journal journal, Pot pot, LocalDate today) {
        History history = new History(journal, pot, today);
        for (Event event : journal.history(pot.id())) {
            if (!event.day().likely().isAfter(today)) {
                history.now = event.day();
                event.what().fold(history);
            }
        }
        return history.life();
    }

    @Override
    public History potted(Happening.Potted happening) {
        if (potted.isEmpty()) {
            potted = Optional.of(now);
            noteCertainty(Stage.WAITING);
            if (stage == Stage.WAITING) {
                enter(Stage.WAITING, stay);
            }
        }
        return this;
    }

    @Override
    public History moved(Happening.Moved happening) {
        Stage next = stage.isBefore(Stage.IN_BLOOM) || stage.isBefore(happening.stage()) ? happening.stage() : stage;
        Optional<Stay> there = stay.filter(here -> here.place().equals(happening.place()))
                .or(() -> Optional.of(new Stay(happening.place(), now)));
        if (next == Stage.IN_BLOOM && !bloom.hasBegun()) {
            bloom = bloom.with(BloomPoint.FIRST_FLOWER, now);
        } else if (next == Stage.AFTER_BLOOM && !bloom.isPast()) {
            bloom = bloom.with(BloomPoint.PAST_BLOOM, now);
        }
        enter(next, there);
        return this;
    }

    @Override
    public History checked(Happening.Checked happening) {
        seen = seen.with(now, happening.findings());
        return this;
    }

    @Override
    public History flowered(Happening.Flowered happening) {
        if (happening.point() != BloomPoint.PAST_BLOOM && isPastBloomSinceAnEarlierSeason()) {
            beginYear();
        }
        bloom = bloom.with(
                happening, now, pot.plantings().stream().map(Planting::variety).toList());
        Stage next = bloom.isPast() ? Stage.AFTER_BLOOM : Stage.IN_BLOOM;
        if (stage.isBefore(next)) {
            enter(next, stay);
        }
        return this;
    }

    /** What kept growing without a rest flowers in its next winter all the same. */
    private boolean isPastBloomSinceAnEarlierSeason() {
        return stage == Stage.AFTER_BLOOM
                && since.filter(day -> journal.seasonOf(day.likely()).isBefore(journal.seasonOf(now.likely())))
                        .isPresent();
    }

    /** A plant that lives on begins another winter: what was seen, answered and flowered belongs to the one before. */
    private void beginYear() {
        years = years.with(bloom, seen.signs(), now);
        bloom = Bloom.NONE;
        seen = Seen.NOTHING;
        answers = Answers.NONE;
        enter(Stage.WARM_ROOM, stay);
    }

    /** Whoever rests is past bloom, whether a flower was written or not. */
    private void rest() {
        if (stage == Stage.IN_BLOOM && !bloom.isPast()) {
            bloom = bloom.with(BloomPoint.PAST_BLOOM, now);
        }
        if (stage == Stage.COOL_ROOM || stage == Stage.WARM_ROOM || stage == Stage.IN_BLOOM) {
            enter(Stage.AFTER_BLOOM, stay);
        }
    }

    @Override
    public History cared(Happening.Cared happening) {
        cares.add(new Noted<>(happening.care(), now));
        if (happening.care() == Care.RESTED) {
            rest();
        } else if (happening.care() == Care.WOKEN && (stage == Stage.IN_BLOOM || stage == Stage.AFTER_BLOOM)) {
            beginYear();
        }
        return this;
    }

    @Override
    public History closed(Closed happening) {
        end = happening;
        enter(Stage.DONE, Optional.empty());
        return this;
    }

    @Override
    public History putOff(Happening.PutOff happening) {
        answers = answers.with(now, happening);
        return this;
    }

    @Override
    public History leftOut(Happening.LeftOut happening) {
        answers = answers.with(now, happening);
        return this;
    }

    @Override
    public History jotted(Happening.Jotted happening) {
        notes.add(new Noted<>(happening.text(), now));
        return this;
    }

    @Override
    public History displayed(Happening.Displayed happening) {
        display = happening.display().map(name -> new Noted<>(name, now));
        return this;
    }

    private void enter(Stage next, Optional<Stay> there) {
        if (stage == Stage.DONE) {
            return;
        }
        endPhase(now.likely());
        if (next != stage || since.isEmpty()) {
            since = Optional.of(now);
            noteCertainty(next);
        }
        stage = next;
        stay = next == Stage.DONE ? Optional.empty() : there;
        phaseBegan = Optional.of(now.likely());
    }

    private void noteCertainty(Stage begun) {
        if (now.isExact()) {
            uncertain.remove(begun);
        } else {
            uncertain.add(begun);
        }
    }

    private void endPhase(LocalDate endExclusive) {
        phaseBegan
                .filter(start -> stage != Stage.DONE && start.isBefore(endExclusive))
                .ifPresent(start ->
                        phases.add(new Phase(stage, stay.map(Stay::place), DaySpan.of(start, endExclusive), true)));
    }

    private PotLife life() {
        endPhase(today.plusDays(1));
        return new PotLife(
                pot,
                standing(),
                stay,
                phases,
                potted,
                new ColdReading(journal, today).of(pot, phases, potted, seen),
                seen,
                bloom,
                years,
                cares,
                notes,
                answers,
                display.filter(in -> stage != Stage.DONE),
                uncertain);
    }

    private Standing standing() {
        Day begun = since.orElse(now);
        return switch (stage) {
            case WAITING -> potted.<Standing>map(Standing.Potted::new).orElseGet(Standing.Waiting::new);
            case COLD -> new Standing.InCold(begun);
            case COOL_ROOM -> new Standing.InCoolRoom(begun);
            case WARM_ROOM -> new Standing.InWarmRoom(begun);
            case IN_BLOOM -> new Standing.InBloom(begun);
            case AFTER_BLOOM -> new Standing.AfterBloom(begun);
            case DONE -> new Standing.Done(end.end(), begun, end.note());
        };
    }
}
