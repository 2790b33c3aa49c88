// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.words.logger.Compared;
import sillbook.words.logger.Correction;
import sillbook.words.logger.Looked;
import sillbook.words.logger.UnderstoodWords;
import sillbook.words.logger.UnderstoodWords.Topic;

/**
 * What the file of a thermometer was understood as and what it comes to, before anything of it is kept.
 *
 * @param showsLines whether the lines that stand out are shown instead of all that
 */
record LoggerPreview(Id<Place> place, Looked looked, Cursor cursor, boolean showsLines) implements Layer {
    private static final int LAYERS_AFTER = 0;

    /** Opened on the first question, where there is one. */
    static LoggerPreview of(Id<Place> place, Looked looked, State state) {
        LoggerPreview preview = new LoggerPreview(place, looked, Cursor.FIRST, false);
        List<Topic> topics = preview.rows(state).topics();
        List<Topic> open = new UnderstoodWords(looked.understood())
                .facts().stream()
                        .filter(UnderstoodWords.Fact::isOpen)
                        .map(UnderstoodWords.Fact::topic)
                        .toList();
        int first = IntStream.range(0, topics.size())
                .filter(at -> open.contains(topics.get(at)))
                .findFirst()
                .orElse(0);
        return preview.to(first, state);
    }

    private LoggerPreview to(int line, State state) {
        return at(cursor.to(line, rows(state).rows(), listRows(state.body())));
    }

    private LoggerPreview at(Cursor to) {
        return new LoggerPreview(place, looked, to, showsLines);
    }

    private LoggerRows rows(State state) {
        return new LoggerRows(state, place, looked, showsLines);
    }

    private static int listRows(Size body) {
        return Math.max(1, body.rows() - ReadingsDrawn.ROWS);
    }

    @Override
    public Look look(State state, Size body) {
        ListPane pane = new ListPane(rows(state).rows(), cursor);
        Look look = Look.body((area, cells) -> render(state, pane, area, cells))
                .withPlace(place(state))
                .withAside(aside(state))
                .withFoot(Action.PUT_RIGHT, Action.KEEP_READINGS, Action.STRANGE_LINES, Action.BACK, Action.KEYS);
        return pane.point(listRows(body)).map(look::withCursor).orElse(look);
    }

    private void render(State state, ListPane pane, Rect area, Cells cells) {
        int rows = listRows(area.size());
        Rect list = area.lines(0, rows);
        pane.render(list, cells.within(list));
        Rect below = area.withoutTop(rows);
        looked.counted()
                .ifPresent(
                        counted -> new ReadingsDrawn(state, place, counted.days()).render(below, cells.within(below)));
    }

    private String place(State state) {
        return looked.understood().questions().isEmpty()
                ? state.journal().places().find(place).map(Place::name).orElse("")
                : "a question is open";
    }

    private Optional<Topic> topic(State state) {
        List<Topic> topics = rows(state).topics();
        return cursor.at() < topics.size() ? Optional.of(topics.get(cursor.at())) : Optional.empty();
    }

    private Aside aside(State state) {
        UnderstoodWords words = new UnderstoodWords(looked.understood());
        return looked.understood().questions().stream()
                .findFirst()
                .map(question ->
                        Aside.of("", words.asks(question), "Enter on its line answers; K keeps nothing before."))
                .orElseGet(() -> Aside.of(
                        "",
                        topic(state)
                                .map(on -> new Correction(on, looked.told())
                                        .advice()
                                        .get(0))
                                .orElse(""),
                        "Wrong somewhere? Up Down to the line, Enter to correct it; the counts follow."));
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(
                Offer.moving(state, key -> pressed(state, key)),
                Offer.of(Action.PUT_RIGHT, () -> putRight(state))
                        .offIf(topic(state).isEmpty(), "there is nothing to correct here"),
                Offer.of(Action.KEEP_READINGS, () -> keep(state)).offIf(hindrance(state)),
                Offer.of(Action.STRANGE_LINES, () -> Step.to(state.withTop(turned())))
                        .offIf(strange() == 0, "no line stands out"));
    }

    private int strange() {
        return looked.counted().map(counted -> counted.strange().size()).orElse(0);
    }

    private LoggerPreview turned() {
        return new LoggerPreview(place, looked, Cursor.FIRST, !showsLines);
    }

    private LoggerPreview pressed(State state, Key key) {
        return at(cursor.pressed(key, rows(state).rows(), listRows(state.body())));
    }

    private Step putRight(State state) {
        return Step.to(topic(state)
                .map(on -> state.laid(LoggerCorrection.of(place, looked, on)))
                .orElse(state));
    }

    private Optional<String> hindrance(State state) {
        if (!looked.understood().questions().isEmpty()) {
            return Optional.of("a question is open");
        }
        if (state.copy().isReadOnly()) {
            return Optional.of("the journal is read only");
        }
        return looked.compared().filter(Compared::hasNews).isPresent()
                ? Optional.empty()
                : Optional.of("all of it is in the book already");
    }

    private Step keep(State state) {
        long all = looked.counted().map(counted -> counted.readings()).orElse(0L);
        State waiting = state.laid(TakingIn.begun(looked.name(), all));
        return Step.asking(waiting, new Effect.TakeInLogger(looked.file(), looked.told(), place), LAYERS_AFTER);
    }

    @Override
    public Step loggerLookedAt(State state, Message.LoggerLookedAt message) {
        return Step.to(state.withTop(new LoggerPreview(place, message.looked(), cursor, false).to(cursor.at(), state)));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return to(cursor.at(), after);
    }
}
