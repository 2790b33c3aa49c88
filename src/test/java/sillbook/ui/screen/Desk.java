// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import sillbook.change.Hand;
import sillbook.handbook.Handbook;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.contents.Sillbook;

/** A screen to press keys on in tests; it remembers the last effects asked for. */
public final class Desk {
    public static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    private static final Window WINDOW = new Window(Window.SMALLEST, Alphabet.UNICODE);

    private State state;
    private List<Effect> effects = List.of();

    public Desk(State state) {
        this.state = state;
    }

    /** A book of one page, with nothing in the journal. */
    public static Desk of(Layer page) {
        return of(Journal.empty(Settings.initial(ZoneOffset.UTC)), page);
    }

    public static Desk of(Journal journal, Layer page) {
        Contents contents = new OnlyLayers(Map.of(PageName.TODAY, page));
        Snapshot shown = new Snapshot(journal, TODAY, 0, 0);
        return new Desk(State.open(kit(contents), Copy.NONE, shown, WINDOW, contents.pages(shown)));
    }

    /** The whole book over that journal, on 12 January 2027. */
    public static Desk over(Journal journal) {
        return over(new Snapshot(journal, TODAY, 412, 0));
    }

    public static Desk over(Snapshot shown) {
        Copy copy = new Copy("winter.sillbook", false, false);
        return new Desk(Sillbook.open(Handbook.standard(), counting(), copy, shown, WINDOW));
    }

    private static Kit kit(Contents contents) {
        return new Kit(contents, Handbook.standard(), counting());
    }

    /** Ids that tests can foretell. */
    public static Ids counting() {
        long[] last = {1_000_000};
        return () -> ++last[0];
    }

    /** Contents in which nothing holds everywhere but Esc. */
    private record OnlyLayers(Map<PageName, Layer> all) implements Contents {
        @Override
        public Layers pages(Snapshot shown) {
            return Layers.of(all);
        }

        @Override
        public List<Offer> everywhere(State state) {
            return List.of(Offer.of(
                    Action.BACK,
                    () -> Step.to(state.top().isHalfDone() ? state.laid(new HalfDone()) : state.lifted())));
        }
    }

    public State state() {
        return state;
    }

    /** What the last message asked for. */
    public List<Effect> effects() {
        return effects;
    }

    public Desk lay(Layer layer) {
        state = state.laid(layer);
        return this;
    }

    public Desk tell(Message message) {
        Step step = Screens.update(state, message);
        state = step.state();
        effects = step.effects();
        return this;
    }

    /** Presses keys by the names the page gives them: {@code press("Down", "Enter", "m")}. */
    public Desk press(String... names) {
        for (String name : names) {
            press(Keys.parse(name).orElseThrow());
        }
        return this;
    }

    public Desk press(Key key) {
        return tell(new Message.Pressed(key));
    }

    public Desk type(String text) {
        text.codePoints().forEach(codePoint -> press(Key.of(codePoint)));
        return this;
    }

    /** Keeps the change that was asked for last, and tells the screen so as the shell does. */
    public Desk kept() {
        Effect.CarryOut asked = (Effect.CarryOut) effects.get(0);
        Hand hand = new Hand(
                TODAY.atStartOfDay().toInstant(ZoneOffset.UTC),
                TODAY,
                state.kit().ids());
        sillbook.change.Step step = asked.change().on(state.journal(), hand).fold(made -> made, refusal -> {
            throw new AssertionError(refusal.sentence());
        });
        Snapshot after = new Snapshot(state.journal().with(step.edits()), TODAY, 1, 0);
        return tell(new Message.Kept(step.name() + ".", false, after));
    }

    public Desk resize(int columns, int rows) {
        return tell(new Message.Resized(new Size(columns, rows)));
    }

    /** The picture, line by line, without spaces at the ends of lines. */
    public List<String> lines() {
        return Screens.view(state, state.window().size())
                .cells()
                .text()
                .lines()
                .map(String::stripTrailing)
                .toList();
    }

    /** One line of the picture, counted from 1 as people count them. */
    public String line(int number) {
        return lines().get(number - 1);
    }

    public Desk on(Size size) {
        return resize(size.columns(), size.rows());
    }
}
