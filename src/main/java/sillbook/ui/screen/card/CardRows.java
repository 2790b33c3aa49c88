// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.season.Ahead;
import sillbook.season.ColdBar;
import sillbook.season.ColdCount;
import sillbook.season.PotNow;
import sillbook.season.RoomWarmth;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotRow;
import sillbook.words.BatchWords;
import sillbook.words.CautionWords;
import sillbook.words.ColdSaid;
import sillbook.words.KeepingWords;
import sillbook.words.LearntWords;
import sillbook.words.OriginMarks;
import sillbook.words.OutcomeWords;
import sillbook.words.PotNames;
import sillbook.words.PotWords;
import sillbook.words.PottingSteps;
import sillbook.words.SuspectWords;
import sillbook.words.WarmthWords;
import sillbook.words.YearWords;

/** The lines of a pot's card. */
final class CardRows {

    private final State state;
    private final Journal journal;
    private final Id<Pot> id;
    private final PotNow now;
    private final List<Row> rows = new ArrayList<>();

    CardRows(State state, Id<Pot> id) {
        this.state = state;
        this.journal = state.journal();
        this.id = id;
        this.now = state.almanac().pot(id);
    }

    Rows rows() {
        head();
        bench();
        ahead();
        cold();
        warmth();
        outcome();
        history();
        care();
        rows.addAll(SitsRows.of(state, now.life().pot()));
        return Rows.of(rows);
    }

    private void head() {
        rows.add(Row.of(new PotRow(state, state.almanac().outlook().line(id))));
        labelled("", PotWords.made(journal, now.life().pot()));
        String dressed = PotWords.dressed(now.life(), together(), new PotNames(journal));
        rows.addAll(Labelled.ifSaid("Now", dressed, state.body().columns()));
        List<String> parts =
                new BatchWords(journal).parts(state.almanac().outlook().batchOf(id));
        rows.addAll(Labelled.each("Batch", parts, state.body().columns()));
    }

    /** While it waits to be potted: the steps at the bench. */
    private void bench() {
        Pot pot = now.life().pot();
        if (now.life().potted().isPresent()) {
            return;
        }
        Kind kind = journal.varieties().get(pot.first().variety()).kind();
        List<String> steps = new PottingSteps(state.kit().handbook(), kind, pot.way())
                .steps().stream().map(PottingSteps.Step::marked).toList();
        rows.addAll(Labelled.each("Bench", steps, state.body().columns()));
    }

    private List<Id<Pot>> together() {
        return now.life()
                .display()
                .map(in -> state.almanac().outlook().inDisplay(in.value()))
                .orElse(List.of());
    }

    private void ahead() {
        if (now.ahead().isEmpty()) {
            return;
        }
        rows.add(Row.of((area, cells) -> {
            cells.put(area.column() + 1, area.row(), "Ahead", Style.BOLD);
            cells.put(area.column() + AheadLine.EARLIEST, area.row(), "earliest", Style.PENCIL);
            cells.put(area.column() + AheadLine.LIKELY, area.row(), "likely", Style.PENCIL);
            cells.put(area.column() + AheadLine.LATEST, area.row(), "latest", Style.PENCIL);
            cells.put(area.column() + AheadLine.RESTS_ON, area.row(), "rests on", Style.PENCIL);
        }));
        for (Ahead each : now.ahead()) {
            rows.add(Row.of(named(each), AheadLine.of(each)));
        }
        rows.addAll(Labelled.each(
                "Signs", LearntWords.ahead(now.signs()), state.body().columns()));
    }

    private static Thing named(Ahead ahead) {
        return new Thing.Named("ahead " + ahead.stage());
    }

    /** The figure the stage ahead on a line rests on; empty of other lines. */
    Optional<FigureName> figure(Thing line) {
        return now.ahead().stream()
                .filter(each -> named(each).equals(line))
                .flatMap(each -> each.figure().stream())
                .map(FigureInForce::name)
                .findFirst();
    }

    private void cold() {
        String needs = now.figures()
                .find(FigureName.COLD)
                .map(figure -> "; needs " + OriginMarks.marked(figure) + " weeks")
                .orElse("");
        PotWords.cold(now).ifPresent(had -> {
            labelled("Cold", had + needs + ".");
            Optional.of(now.life().cold().count())
                    .filter(ColdCount::isRead)
                    .ifPresent(read -> labelled("", "By thermometer: " + ColdSaid.say(read) + "."));
            ColdBar.of(journal, now, state.shown().today()).map(ColdBarRow::new).ifPresent(bar -> rows.add(bar.row()));
        });
    }

    /** What the warmth of its rooms comes to. */
    private void warmth() {
        RoomWarmth warmth = RoomWarmth.of(journal, now, state.shown().today());
        rows.addAll(Labelled.each(
                "Warmth", new WarmthWords(journal).say(warmth), state.body().columns()));
    }

    /** How it did; of a failed one what the journal says of every cause. */
    private void outcome() {
        OutcomeWords words = new OutcomeWords(journal);
        String label = "Did";
        for (Outcome outcome : now.life().years().present(journal.outcomesOf(id))) {
            rows.addAll(new Labelled(label, words.say(outcome))
                    .rows(new Thing.OfOutcome(outcome.id()), state.body().columns()));
            label = "";
        }
        rows.addAll(Labelled.each(
                "Before", new YearWords(journal).past(now.life()), state.body().columns()));
        if (now.life().isFailed()) {
            SuspectWords causes = new SuspectWords(journal);
            rows.addAll(Labelled.each(
                    "Causes",
                    state.almanac().outlook().suspects(id, journal.failureOf(id)).stream()
                            .map(causes::line)
                            .toList(),
                    state.body().columns()));
        }
    }

    /** Newest first. */
    private void history() {
        List<Event> events = new ArrayList<>(journal.history(id));
        Collections.reverse(events);
        rows.add(Row.heading("So far"));
        boolean isOfOneSeason = events.stream().allMatch(this::isOfThisSeason);
        events.forEach(event -> {
            EntryLine line = isOfOneSeason ? EntryLine.of(journal, event) : EntryLine.withYear(journal, event);
            rows.add(line.row());
        });
    }

    private boolean isOfThisSeason(Event event) {
        return journal.seasonOf(event.day().likely())
                .equals(journal.seasonOf(state.shown().today()));
    }

    private void care() {
        rows.addAll(Labelled.each(
                "Keep",
                new KeepingWords(
                                state.kit().handbook(),
                                journal.settings().lengths(),
                                state.shown().today())
                        .say(now),
                state.body().columns()));
        CautionWords cautions = new CautionWords(state.kit().handbook(), journal.settings());
        rows.addAll(Labelled.each(
                "Care", cautions.of(journal, now.life().pot()), state.body().columns()));
    }

    private void labelled(String label, String text) {
        rows.addAll(new Labelled(label, text).rows(state.body().columns()));
    }
}
