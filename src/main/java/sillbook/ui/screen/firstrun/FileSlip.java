// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.util.Optional;
import sillbook.model.Settings.Colours;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.OneFile;

/** Asks which file to open. */
record FileSlip(Field file) implements OneFile {
    static final FileSlip EMPTY = new FileSlip(Field.EMPTY);

    @Override
    public Optional<String> draftName() {
        return Optional.of("open a journal");
    }

    @Override
    public boolean isHalfDone() {
        return !file.isEmpty();
    }

    @Override
    public String title() {
        return "Open a journal";
    }

    @Override
    public FileSlip with(Field typed) {
        return new FileSlip(typed);
    }

    @Override
    public Aside aside(State state) {
        return Aside.of("Write or paste the file's name, with its folder. It is only looked at.");
    }

    @Override
    public Effect effect(State state, String name) {
        return new Effect.OpenJournal(name, colours(state));
    }

    @Override
    public String does() {
        return "open it";
    }

    private static Colours colours(State state) {
        return state.journal().settings().colours();
    }
}
