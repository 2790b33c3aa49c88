// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.change.WriteDown;
import sillbook.model.PottingMix;
import sillbook.model.PottingMix.Part;
import sillbook.words.Heard;
import sillbook.words.Mixes;

/** {@code mix sill mix: 2 loam, 1 peat, 1 sand}: a potting mix by its parts, or only the name on the bag. */
final class MixForm implements Form {
    private static final Slot<Part> PART =
            Slot.many("part", Senses.matching("(\\d{1,3}(?:[.,]\\d)?)(?: parts?)?(?: of)? ([^\\d].*)", said -> {
                double parts = Double.parseDouble(said.text(1).replace(',', '.'));
                return parts > 0
                        ? Heard.as(new Part(parts, said.text(2)))
                        : Heard.not("a part of nothing", "A part of nothing is no part. Write a number, as 2 loam.");
            }));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "potting mix",
                "A name, then its parts by volume, or none for a mix from a bag. Of one that is there the parts are replaced.",
                "mix sill mix: 2 loam, 1 peat, 1 sand");
    }

    @Override
    public List<String> keywords() {
        return List.of("mix");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.NAME, PART, Slots.CALLED, Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.NAME) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.NAME)
                .ifPresentOrElse(
                        name -> write(name, filled, draft),
                        () -> draft.ask("which name?", "What is the mix called? Write its name, then its parts."));
    }

    private static void write(String name, Filled filled, Draft draft) {
        List<PottingMix> there =
                new Names<>(draft.bench().journal().pottingMixes().all(), PottingMix::name).whole(name);
        PottingMix before =
                there.isEmpty() ? new PottingMix(draft.bench().ids().next(), name, List.of(), "") : there.get(0);
        List<Part> parts = filled.all(PART);
        Lines.written("potting mix", name, there.isEmpty(), draft);
        filled.get(Slots.CALLED).ifPresent(other -> draft.means("from now on called " + other));
        if (!parts.isEmpty()) {
            draft.means(Mixes.say(parts));
        }
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
        draft.change(new WriteDown(new PottingMix(
                before.id(),
                filled.get(Slots.CALLED).orElse(before.name()),
                parts.isEmpty() ? before.parts() : parts,
                filled.get(Slots.NOTE).orElse(before.note()))));
    }
}
