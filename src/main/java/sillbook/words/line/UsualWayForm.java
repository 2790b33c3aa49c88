// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Potting;
import sillbook.model.UsualWay;
import sillbook.words.PottingWords;

/** {@code usual way kitchen pans: pan 15 cm, sill mix, mesh, tips level, grit}: a way the grower fills pots, by name. */
final class UsualWayForm implements Form {
    private static final Slot<String> NAME = Slot.one("name", Senses.phraseAt(2));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "usual way",
                "A name for the way you fill pots; then container or size, potting mix, paper, mesh or crocks over the holes, how "
                        + "deep (half out, tips out, tips level, just covered, covered), topping. Of one that is there only "
                        + "what is written changes, and pots filled before stay as they were; called gives it another name.",
                "usual way kitchen pans: pan 15 cm, sill mix, mesh, tips level, topping grit");
    }

    @Override
    public List<String> keywords() {
        return List.of("usual way");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(
                NAME,
                Slots.CONTAINER,
                Slots.LENGTH,
                Slots.MIX,
                PottingFacts.HOLES,
                PottingFacts.DEPTH,
                PottingFacts.TOPPING,
                Slots.CALLED,
                Slots.NOTE,
                Slots.FREE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(NAME) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(NAME)
                .ifPresentOrElse(
                        name -> write(name, filled, draft),
                        () -> draft.ask(
                                "which name?",
                                "What is the way called? Write its name, then what it is, as: kitchen pans: pan 15 cm."));
    }

    private static void write(String name, Filled filled, Draft draft) {
        List<UsualWay> there = new Names<>(draft.bench().journal().usualWays().all(), UsualWay::name).whole(name);
        UsualWay before = there.isEmpty() ? MakingWay.bare(name, draft.bench()) : there.get(0);
        UsualWay way = over(before, filled);
        Lines.written("usual way", before.name(), there.isEmpty(), draft);
        filled.get(Slots.CALLED).ifPresent(other -> draft.means("from now on called " + other));
        draft.means(new PottingWords(draft.bench().journal()).say(way));
        draft.change(new WriteDown(way));
    }

    private static UsualWay over(UsualWay before, Filled filled) {
        PottingFacts facts = new PottingFacts(filled);
        Potting potting = facts.over(before.potting());
        return new UsualWay(
                before.id(),
                filled.get(Slots.CALLED).orElse(before.name()),
                facts.container().or(() -> filled.has(Slots.LENGTH) ? Optional.empty() : before.container()),
                facts.across().or(() -> filled.has(Slots.CONTAINER) ? Optional.empty() : before.across()),
                facts.mix().or(before::pottingMix),
                potting.holes(),
                potting.depth(),
                filled.get(PottingFacts.TOPPING)
                        .or(() -> filled.get(Slots.FREE))
                        .orElse(before.topping()),
                filled.get(Slots.NOTE).orElse(before.note()));
    }
}
