// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Choice.SetAside;

/** {@code set aside Inkwell, floppy two winters}: a variety is not wanted for a season. */
final class SetAsideForm implements Form {
    private static final Slot<String> BECAUSE = Slot.one("", Senses.restAfter("because"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "set aside",
                "A variety, and why it is not wanted, if you like; for and a season, if not the coming one.",
                "set aside Inkwell, floppy two winters",
                "set aside Linen Parade because both pots leaned");
    }

    @Override
    public List<String> keywords() {
        return List.of("set aside");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.ANY_VARIETY, Marking.SEASON, BECAUSE, Slots.FREE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.ANY_VARIETY) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        String reason = filled.get(BECAUSE).or(() -> filled.get(Slots.FREE)).orElse("");
        new Marking(filled, draft).mark("set aside Inkwell", (variety, season) -> Optional.of(new SetAside(reason)));
    }
}
