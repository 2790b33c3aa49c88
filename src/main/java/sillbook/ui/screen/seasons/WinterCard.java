// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.season.past.Foretellings;
import sillbook.season.past.Summary;
import sillbook.season.past.Truth;
import sillbook.text.Columns;
import sillbook.text.Initial;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.why.ExplanationSlip;
import sillbook.words.SummaryWords;
import sillbook.words.TruthWhy;
import sillbook.words.TruthWords;

/**
 * One winter, a fact a line. How true its dates were is asked of the shell, for what was foretold is kept in the file alone.
 *
 * @param asked of which journal that was asked
 * @param told the answer, as soon as it has come
 */
record WinterCard(Season winter, Optional<Journal> asked, Optional<Foretellings> told) implements Layer {
    static WinterCard of(Season winter) {
        return new WinterCard(winter, Optional.empty(), Optional.empty());
    }

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    @Override
    public Step onTop(State state) {
        if (asked.filter(state.journal()::equals).isPresent()) {
            return Step.to(state);
        }
        return Step.to(
                state.withTop(new WinterCard(winter, Optional.of(state.journal()), told)),
                new Effect.ReadKept(state.journal(), state.shown().today()));
    }

    @Override
    public Layer keptRead(Message.KeptRead answer) {
        return new WinterCard(winter, asked, Optional.of(answer.foretellings()));
    }

    private Optional<Truth> truth() {
        return told.map(foretellings -> foretellings.of(winter));
    }

    private Optional<Summary> summary(State state) {
        return state.almanac().summaries().stream()
                .filter(one -> one.winter().equals(winter))
                .findFirst();
    }

    @Override
    public Look look(State state, Size body) {
        SummaryWords words = new SummaryWords(state.journal());
        List<Row> rows = new ArrayList<>();
        summary(state).ifPresent(one -> {
            rows.add(Row.heading("Winter " + words.winter(one)));
            words.facts(one).forEach(fact -> lines(fact, body).forEach(rows::add));
            truth().ifPresent(truth -> lines(dates(truth), body).forEach(rows::add));
        });
        return Look.body(new ListPane(Rows.of(rows), Cursor.FIRST))
                .withFoot(Action.WRITE_LINE, Action.WHY, Action.BACK);
    }

    private static String dates(Truth truth) {
        return Stream.concat(TruthWords.facts(truth).stream(), TruthWords.byStage(truth).stream())
                .collect(Collectors.joining("; "));
    }

    private static List<Row> lines(String fact, Size body) {
        return Columns.wrap(Initial.large(fact) + ".", Math.max(1, body.columns() - Row.LABEL - 1)).stream()
                .map(text -> Row.of((area, cells) -> cells.put(area.column() + Row.LABEL, area.row(), text, Style.INK)))
                .toList();
    }

    @Override
    public List<Offer> offers(State state) {
        Optional<Truth> known = truth().filter(truth -> !truth.all().isEmpty());
        List<Offer> offers = new ArrayList<>(new Acts(state, Optional.empty())
                .offers().stream().filter(offer -> offer.action() != Action.WHY).toList());
        offers.add(Offer.of(
                        Action.WHY,
                        () -> Step.to(known.map(truth -> state.laid(
                                        new ExplanationSlip(new TruthWhy(state.journal()).explain(winter, truth))))
                                .orElse(state)))
                .offIf(known.isEmpty(), "no kept window whose day came"));
        return offers;
    }
}
