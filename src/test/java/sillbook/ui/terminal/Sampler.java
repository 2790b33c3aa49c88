// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Ground;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Rule;
import sillbook.ui.draw.Scroll;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;

/** A small full-screen program of no use but to be looked at: a list, the last input, and keys that leave, crash and suspend. */
public final class Sampler {
    private static final int LINES = 200;

    private Sampler() {}

    record State(int cursor, Scroll scroll, String last, int inputs, Size size) {}

    /** Effects of the sampler. */
    enum Effect {
        LEAVE,
        SUSPEND,
        REDRAW,
        ASK,
        ASK_ASIDE,
        FAIL
    }

    static Program<State, Input, Effect> program(Ground ground, Alphabet alphabet) {
        return new Program<>(
                new State(0, Scroll.TOP, "nothing", 0, new Size(0, 0)),
                Sampler::update,
                (state, size) -> view(state, size, alphabet),
                input -> input,
                effect -> switch (effect) {
                    case LEAVE -> Program.Doer.LEAVE;
                    case SUSPEND -> Program.Doer.SUSPEND;
                    case REDRAW -> Program.Doer.REDRAW;
                    case ASK_ASIDE -> Program.Doer.ASIDE;
                    case ASK, FAIL -> Program.Doer.EFFECTS;
                },
                state -> ground);
    }

    static void carryOut(Effect effect, Consumer<Input> answer) {
        if (effect == Effect.FAIL) {
            throw new IllegalStateException("a fault in an effect, 'Marrow Lane'");
        }
        answer.accept(new Input.Pasted("the answer"));
    }

    private static Program.Step<State, Effect> update(State state, Input input) {
        if (input instanceof Input.Resized resized) {
            Scroll scroll =
                    state.scroll().follow(state.cursor(), LINES, resized.size().rows() - 3);
            return to(new State(state.cursor(), scroll, state.last(), state.inputs(), resized.size()));
        }
        if (input instanceof Input.Pasted pasted) {
            return to(heard(state, "'" + Field.of(pasted.text()).text() + "'", state.cursor()));
        }
        Key key = ((Input.Pressed) input).key();
        State next = heard(state, key.words(), moved(state, key));
        return effect(key)
                .map(effect -> new Program.Step<>(next, List.of(effect)))
                .orElse(to(next));
    }

    private static int moved(State state, Key key) {
        int page = Math.max(1, state.size().rows() - 3);
        int by = key.equals(Keys.DOWN) ? 1 : key.equals(Keys.UP) ? -1 : key.equals(Keys.PAGE_DOWN) ? page : 0;
        return Math.max(0, Math.min(LINES - 1, state.cursor() + by));
    }

    private static Optional<Effect> effect(Key key) {
        return Optional.ofNullable(
                switch (key.words()) {
                    case "Q" -> Effect.LEAVE;
                    case "Ctrl-Z" -> Effect.SUSPEND;
                    case "Ctrl-L" -> Effect.REDRAW;
                    case "E" -> Effect.ASK;
                    case "A" -> Effect.ASK_ASIDE;
                    case "F" -> Effect.FAIL;
                    case "X" -> throw new IllegalStateException("a fault in the program, 'Marrow Lane'");
                    default -> null;
                });
    }

    private static State heard(State state, String last, int cursor) {
        Scroll scroll = state.scroll().follow(cursor, LINES, state.size().rows() - 3);
        return new State(cursor, scroll, last, state.inputs() + 1, state.size());
    }

    private static Program.Step<State, Effect> to(State state) {
        return new Program.Step<>(state, List.of());
    }

    static Frame view(State state, Size size, Alphabet alphabet) {
        Cells cells = Cells.blank(size, alphabet);
        cells.put(0, 0, " Sampler of " + size + "  " + state.inputs() + " inputs, last " + state.last(), Style.BOLD);
        new Listing(LINES, state.cursor(), state.scroll(), Sampler::row)
                .render(cells.area().withoutTop(1).withoutBottom(2), cells);
        Rule.PLAIN
                .withRight("line " + (state.cursor() + 1) + " of " + LINES)
                .render(cells.area().line(size.rows() - 2), cells);
        cells.put(1, size.rows() - 1, "Écru 球根 🌷 ⚡ end of emoji, e\u0301 and \u001B[31m", Style.INK);
        return new Frame(
                cells,
                Optional.of(new Point(4, 1 + state.cursor() - state.scroll().first())));
    }

    private static void row(int index, sillbook.ui.draw.Rect line, Cells cells) {
        int column = cells.put(line.column() + 4, line.row(), "T" + index, Style.BOLD) + 1;
        cells.put(column, line.row(), "'Marrow Lane' x" + index, Style.INK);
        for (int at = 27; at < line.right() - 1; at++) {
            boolean cold = (at + index) % 40 < 20;
            cells.put(at, line.row(), cold ? Sign.COLD : Sign.BLOOM_FORETOLD, Style.of(cold ? Role.FROST : Role.PETAL));
        }
    }

    /** Arguments: a ground, and the folder for reports of faults. */
    public static void main(String[] arguments) throws Exception {
        Surroundings around = Surroundings.of(System.getenv(), ColourWish.AUTO, true);
        Optional<Shell> shell = Shell.open(around.depth());
        if (shell.isEmpty()) {
            System.err.println("usage: Sampler GROUND FOLDER, in a terminal");
            System.exit(2);
        }
        Program<State, Input, Effect> program = program(Ground.valueOf(arguments[0]), around.alphabet());
        Shell.Ending ending = shell.orElseThrow().run(program, Sampler::carryOut, Path.of(arguments[1]), loop -> {});
        if (ending instanceof Shell.Ending.Crashed crashed) {
            System.err.println(crashed.sentence());
            System.exit(1);
        }
    }
}
