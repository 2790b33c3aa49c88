// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Settings;
import sillbook.model.Space;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Trench;
import sillbook.season.Job;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceNow;
import sillbook.season.PotLine;
import sillbook.season.WaitingBulbs;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.card.EntryLine;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.DryBulbAside;
import sillbook.ui.screen.pot.PotRow;
import sillbook.words.CautionWords;
import sillbook.words.ClimateWords;
import sillbook.words.ColdDayWords;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.GroundAheadWords;
import sillbook.words.GroundWords;
import sillbook.words.PlaceTerms;
import sillbook.words.ReadingWords;
import sillbook.words.SpaceWords;
import sillbook.words.Temperatures;
import sillbook.words.Terms;
import sillbook.words.Weeks;

/** The lines of a place's card: what it is, what to beware of, what stands there, what was noted. */
final class PlaceCardRows {
    private final State state;
    private final PlaceNow now;
    private final Place place;
    private final List<Row> rows = new ArrayList<>();

    PlaceCardRows(State state, PlaceNow now) {
        this.state = state;
        this.now = now;
        this.place = now.place();
    }

    Rows rows() {
        rows.add(Row.of(new Thing.OfPlace(place.id()), this::head));
        labelled("", facts());
        rows.addAll(Labelled.each(
                "Today", new PlaceAside(state).sentences(place), state.body().columns()));
        read();
        labelled("Round", round());
        labelledIfSaid("Crowd", new PlaceAside(state).kept(now).orElse(""));
        labelledIfSaid("Light", place.light());
        labelledIfSaid("Note", place.note());
        ground();
        cautions();
        pots();
        waiting();
        rows.addAll(new PlaceReadings(state, place).rows());
        rows.addAll(new PlaceFiles(state, place.id()).rows());
        rows.addAll(EntryLine.newestFirst(state.journal(), new Subject.OfPlace(place.id()), "So far"));
        return Rows.of(rows);
    }

    private void head(Rect line, Cells cells) {
        PlaceSign.of(state, now).ifPresent(sign -> sign.render(line, cells));
        int after = cells.put(line.column() + Row.LABEL, line.row(), place.name(), Style.BOLD);
        cells.put(after + 2, line.row(), full(), Style.INK);
    }

    /** {@code 18 pots, room for 20; in two weeks 14, 6 more find room}. */
    private String full() {
        String there = now.pots().isEmpty() ? "no pots" : Counts.of(now.pots().size(), "pot");
        String room = place.room().map(pots -> ", room for " + pots).orElse("");
        String left = now.leftInTwoWeeks()
                .filter(more -> more >= 0)
                .map(more -> ", " + (more == 0 ? "full" : more + " more find room"))
                .orElse("");
        return there + room + "; in two weeks " + now.inTwoWeeks().size() + left;
    }

    private String facts() {
        Settings settings = state.journal().settings();
        List<String> facts = new ArrayList<>();
        facts.add(PlaceTerms.SORTS.say(place.sort()));
        facts.add("serves " + Terms.STAGES.say(place.serves()));
        facts.add(place.usual()
                .map(band -> "usually " + Temperatures.fromTo(band, settings.temperatures()))
                .orElse("usual temperature not known"));
        if (place.serves() == Stage.COLD) {
            facts.add("cold " + ColdDayWords.say(place.coldDays()) + (now.isCold() ? "" : ", not now"));
        }
        Space.of(place.id(), state.journal())
                .ifPresent(space -> facts.addAll(SpaceWords.say(space, settings.lengths())));
        return String.join("; ", facts);
    }

    /** How warm it has been, and by which thermometer. */
    private void read() {
        Settings settings = state.journal().settings();
        PlaceClimate climate = state.almanac().climate(place.id());
        ClimateWords words = new ClimateWords(settings, state.shown().at());
        if (climate.isRead()) {
            labelledIfSaid("Read", String.join("; ", words.recent(climate)));
            climate.season()
                    .ifPresent(season -> labelledIfSaid("Season", String.join("; ", words.season(climate, season))));
        } else {
            labelled("Read", PlaceBelow.neverRead(state));
        }
        ReadingWords reading = new ReadingWords(settings);
        String by = state.journal()
                .thermometerAt(place.id())
                .map(thermometer -> reading.say(thermometer) + "; ")
                .orElse("");
        if (climate.isRead() || !by.isEmpty()) {
            labelled("", by + reading.bridged(place));
        }
    }

    private String round() {
        if (place.checkEveryDays() == 0) {
            return "never asked for"
                    + now.lastLook().map(day -> "; last look " + Days.day(day)).orElse("");
        }
        String every = place.checkEveryDays() == 1 ? "every day" : "every " + place.checkEveryDays() + " days";
        return every + now.round().map(this::lastAndNext).orElse("");
    }

    private String lastAndNext(Job.Round round) {
        return "; last " + Days.day(round.last()) + ", "
                + PlaceAside.due(round, state.shown().today());
    }

    /** How pots stand buried; asked for where they are likely to. */
    private void ground() {
        Optional<Trench> trench = state.journal().trench(place.id());
        boolean isLikely = place.sort() == Sort.TRENCH || place.sort() == Sort.COLD_FRAME;
        if (trench.isPresent() || isLikely) {
            String says = trench.map(new GroundWords(state.journal())::say)
                    .orElse("not written down; E here writes it, then its cold is foretold");
            rows.addAll(new Labelled("Ground", says)
                    .rows(PlaceCard.GROUND, state.body().columns()));
        }
        if (trench.isPresent()) {
            rows.addAll(Labelled.each("Ahead", groundAhead(), state.body().columns()));
        }
    }

    private List<String> groundAhead() {
        return state.almanac()
                .ground(place.id())
                .map(new GroundAheadWords(state.journal().settings())::say)
                .orElse(List.of(GroundAheadWords.NOT_YET));
    }

    private void cautions() {
        Settings settings = state.journal().settings();
        List<String> cautions = new CautionWords(state.kit().handbook(), settings).of(place);
        rows.addAll(Labelled.each(
                "Beware",
                cautions.stream().map(caution -> "▴ " + caution).toList(),
                state.body().columns()));
    }

    private void pots() {
        rows.add(Row.heading("Here"));
        List<PotLine> lines = state.almanac().linesAt(place.id());
        lines.forEach(line -> rows.add(new PotRow(state, line).row()));
        if (lines.isEmpty()) {
            labelled("", PlacePots.NOTHING);
        }
    }

    /** Bulbs that are not potted yet. */
    private void waiting() {
        if (now.waiting().isEmpty()) {
            return;
        }
        rows.add(Row.heading("Waiting"));
        now.waiting()
                .forEach(bulbs -> rows.add(Row.text(waiting(bulbs), Style.INK)
                        .on(new Thing.OfPurchase(bulbs.purchase().id()))));
        rows.addAll(Labelled.each(
                "Keep", new DryBulbAside(state).words().keeping(), state.body().columns()));
    }

    /** {@code 12 'Marrow Lane' of 30, came Tue 1 Sep 2026, 3 weeks of it cold}. */
    private String waiting(WaitingBulbs bulbs) {
        Purchase purchase = bulbs.purchase();
        String variety = state.journal().varieties().get(purchase.variety()).name();
        String of = bulbs.bulbs() == purchase.sound() ? "" : " of " + purchase.sound();
        int days = bulbs.dry().atTheirPlace();
        String cold = days == 0 ? "" : ", " + Weeks.sayDays(days) + " of it cold";
        return bulbs.bulbs() + " '" + variety + "'" + of + ", came " + Days.full(purchase.day()) + cold;
    }

    private void labelled(String label, String text) {
        rows.addAll(new Labelled(label, text).rows(state.body().columns()));
    }

    private void labelledIfSaid(String label, String text) {
        rows.addAll(Labelled.ifSaid(label, text, state.body().columns()));
    }
}
