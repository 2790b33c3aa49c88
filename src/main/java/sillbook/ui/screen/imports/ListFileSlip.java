// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import sillbook.ui.draw.Field;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneFile;

/** Asks in which file a list stands. It stays under the list, so that a file that was mended is read again with a key. */
public record ListFileSlip(Field file) implements OneFile {
    public static final ListFileSlip EMPTY = new ListFileSlip(Field.EMPTY);

    @Override
    public String title() {
        return "Import a list of varieties or purchases";
    }

    @Override
    public ListFileSlip with(Field typed) {
        return new ListFileSlip(typed);
    }

    @Override
    public Aside aside(State state) {
        return Aside.of(
                "",
                "A CSV file in UTF-8, its first row the names of columns: name, kind, height ..",
                "Nothing is kept before you have seen what each row comes to.");
    }

    @Override
    public Effect effect(State state, String name) {
        return new Effect.ReadTable(name);
    }

    @Override
    public Step tableRead(State state, Message.TableRead message) {
        return Step.to(ListPreview.of(state, message.file(), message.table())
                .fold(state::laid, why -> state.saying(Said.problem(message.file() + ": " + why.sentence()))));
    }
}
