// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.util.List;
import java.util.Optional;
import sillbook.model.Settings.Colours;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneField;

/** Asks which file to open. */
record FileSlip(Field file) implements OneField {
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
    public String label() {
        return "File";
    }

    @Override
    public Field field() {
        return file;
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
    public List<Offer> offers(State state) {
        String name = file.text().strip();
        return List.of(Offer.of(Action.AGREE, () -> Step.to(state, new Effect.OpenJournal(name, colours(state))))
                .saying("open it")
                .offIf(name.isEmpty(), "no file is named yet"));
    }

    private static Colours colours(State state) {
        return state.journal().settings().colours();
    }
}
