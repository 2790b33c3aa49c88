// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.List;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** A slip that asks which file, to have something done with it. */
public interface OneFile extends OneField {
    Field file();

    /** What is done with the file of that name, as it was typed. */
    Effect effect(State state, String name);

    /** The same in words, for the key that does it. */
    default String does() {
        return "look at it";
    }

    @Override
    default String label() {
        return "File";
    }

    @Override
    default Field field() {
        return file();
    }

    @Override
    default List<Offer> offers(State state) {
        String name = file().text().strip();
        return List.of(Offer.of(Action.AGREE, () -> Step.to(state, effect(state, name)))
                .saying(does())
                .offIf(name.isEmpty(), "no file is named yet"));
    }
}
