// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Kind;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Variety;
import sillbook.model.Variety.BloomSeason;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/** {@code variety Marrow Lane, tulip triumph, 45 cm, red}: a variety is written down, or one there is corrected. */
final class VarietyForm implements Form {
    private static final Slot<Scent> SCENT = Slot.one("scent", Senses.oneOf(Terms.SCENTS));
    private static final Slot<BloomSeason> SEASON = Slot.one("time of flower", Senses.oneOf(Terms.BLOOM_SEASONS));
    private static final Slot<ForPots> FOR_POTS = Slot.one("", Senses.oneOf(Terms.FOR_POTS));
    private static final Slot<PacketForcing> PACKET = Slot.one("", Senses.oneOf("packet", Terms.PACKETS));
    private static final Slot<String> SOLD_AS = Slot.one("", Senses.phraseAfter("sold as", "packet name"));
    private static final Slot<String> COLOUR = Slot.one("", Senses.phraseAfter("colour", "color"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "variety",
                "A name and its kind; then height, early, mid season or late, colour, scent, packet yes or no (what it says of "
                        + "forcing), your own mark (suits pots, tall for pots, not for pots), sold as, note. "
                        + "Of a variety that is there only what is written changes; called gives it another name.",
                "variety Marrow Lane, tulip triumph, 45 cm, mid season, red, scented, packet yes",
                "variety Goose Errand, tall for pots");
    }

    @Override
    public List<String> keywords() {
        return List.of("variety");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(
                Slots.NAME,
                Slots.KIND,
                Slots.LENGTH,
                SEASON,
                SCENT,
                PACKET,
                FOR_POTS,
                SOLD_AS,
                COLOUR,
                Slots.CALLED,
                Slots.NOTE,
                Slots.FREE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.NAME) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.NAME)
                .ifPresentOrElse(
                        name -> named(name, filled, draft),
                        () -> draft.ask(
                                "which name?",
                                "What is the variety called? Write its name, then its kind, as: Marrow Lane, tulip."));
    }

    private static void named(String name, Filled filled, Draft draft) {
        Optional<Kind> kind = filled.get(Slots.KIND);
        List<Variety> there = known(name, kind, draft.bench());
        if (there.size() == 1) {
            write(there.get(0), false, filled, draft);
        } else if (kind.isPresent()) {
            write(Variety.of(draft.bench().ids().next(), name, kind.get()), true, filled, draft);
        } else {
            draft.means("variety: " + Lines.quoted(name));
            draft.ask("which kind?", "Which kind is " + Lines.quoted(name) + "? Write it too, as tulip triumph.");
        }
    }

    /** Those of that name; where there are several, those of the kind alone. */
    private static List<Variety> known(String name, Optional<Kind> kind, Bench bench) {
        List<Variety> named = new Names<>(bench.journal().varieties().all(), Variety::name).whole(name);
        return named.size() < 2
                ? named
                : named.stream()
                        .filter(variety -> kind.filter(written ->
                                        written.name().equals(variety.kind().name()))
                                .isPresent())
                        .toList();
    }

    private static void write(Variety before, boolean isNew, Filled filled, Draft draft) {
        Variety variety = new Variety(
                before.id(),
                filled.get(Slots.CALLED).orElse(before.name()),
                filled.get(SOLD_AS).orElse(before.packetName()),
                filled.get(Slots.KIND).orElse(before.kind()),
                filled.get(Slots.LENGTH).or(before::height),
                filled.get(SEASON).orElse(before.bloomSeason()),
                filled.get(COLOUR).or(() -> filled.get(Slots.FREE)).orElse(before.colour()),
                filled.get(SCENT).orElse(before.scent()),
                filled.get(PACKET).orElse(before.packetForcing()),
                filled.get(FOR_POTS).orElse(before.forPots()),
                filled.get(Slots.NOTE).orElse(before.note()));
        Lines.written("variety", Lines.quoted(before.name()), isNew, draft);
        say(variety, filled, draft);
        draft.change(new WriteDown(variety));
    }

    private static void say(Variety variety, Filled filled, Draft draft) {
        LengthUnit unit = draft.bench().journal().settings().lengths();
        filled.get(Slots.CALLED).ifPresent(name -> draft.means("from now on called " + Lines.quoted(name)));
        draft.means(variety.kind().toString());
        filled.get(Slots.LENGTH).ifPresent(height -> draft.means(Lengths.say(height, unit) + " tall"));
        filled.get(SEASON).ifPresent(season -> draft.means("flowers: " + Terms.BLOOM_SEASONS.say(season)));
        filled.get(COLOUR).or(() -> filled.get(Slots.FREE)).ifPresent(colour -> draft.means("colour: " + colour));
        filled.get(SCENT).ifPresent(scent -> draft.means(Terms.SCENTS.say(scent)));
        filled.get(PACKET).ifPresent(packet -> draft.means("the packet on forcing: " + Terms.PACKETS.say(packet)));
        filled.get(FOR_POTS).ifPresent(mark -> draft.means("your mark: " + Terms.FOR_POTS.say(mark)));
        filled.get(SOLD_AS).ifPresent(name -> draft.means("sold as " + name));
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
    }
}
