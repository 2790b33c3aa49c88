// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.change.Close;
import sillbook.model.Happening.End;
import sillbook.model.Pot;
import sillbook.words.Terms;

/** {@code T4 done}: the winter of some pots ends. */
final class CloseForm implements Form {
    static final Slot<End> END = Slot.one("end", Senses.oneOf(Terms.ENDS));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "end",
                "Pots, and done, sold, given away, broken, used up or failed; note and a few words, if you like. Of many pots next "
                        + "and a number means so many, those furthest on first. What is sold, given, broken or used up asks for no "
                        + "outcome, and is no failure.",
                "T4 done",
                "T1-T6 next 2 sold",
                "T4 T5 given, note to the neighbours");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, SomeOf.HOW_MANY, END, Slots.DAY, Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) ? 0 : 1) + (filled.has(END) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots =
                SomeOf.of(Slots.pots(filled), filled, draft, draft.bench().outlook()::turnsAway);
        Lines.pots(pots, draft);
        filled.get(END).ifPresent(end -> {
            String note = filled.get(Slots.NOTE).orElse("");
            Lines.happened(Terms.ENDS.say(end), filled, draft);
            Lines.noted(note, draft);
            draft.change(new Close(Lines.ids(pots), end, note, Slots.day(filled, draft.bench())));
        });
    }
}
