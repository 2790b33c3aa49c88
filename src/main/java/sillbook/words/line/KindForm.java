// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Kind;
import sillbook.model.OwnKind;
import sillbook.words.Heard;

/** {@code kind starflower, letter F, like squill}: a kind the handbook does not have. */
final class KindForm implements Form {
    private static final Slot<String> LETTER = Slot.one(
            "",
            Senses.matching(
                    "letters? ([a-z]{1,3})", said -> Heard.as(said.text(1).toUpperCase(Locale.ROOT))));
    private static final Slot<Kind> LIKE = Slot.one("", (line, from, bench) -> like(line, from, bench));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "kind",
                "The name of a kind that the handbook does not have, the letter its labels begin with, and a kind whose figures it "
                        + "borrows.",
                "kind starflower, letter F, like squill");
    }

    @Override
    public List<String> keywords() {
        return List.of("kind");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.NAME, LETTER, LIKE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.NAME) ? 0 : 1;
    }

    private static Optional<Found<Kind>> like(Written line, int from, Bench bench) {
        boolean led =
                line.phraseEnd(from) > from + 1 && line.folded(from, from + 1).equals("like");
        return led ? KindSense.SENSE.at(line, from + 1, bench) : Optional.empty();
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.NAME)
                .map(name -> name.toLowerCase(Locale.ROOT))
                .ifPresentOrElse(
                        name -> write(name, filled, draft),
                        () -> draft.ask(
                                "which name?",
                                "What is the kind called? Write its name, then: like, and a kind it resembles."));
    }

    private static void write(String name, Filled filled, Draft draft) {
        if (draft.bench().handbook().find(name).isPresent()) {
            draft.ask(
                    "known already",
                    "The handbook has " + name + " already. Set figures of your own for it with: figure " + name + ".");
        }
        List<OwnKind> there = new Names<>(draft.bench().journal().ownKinds().all(), OwnKind::name).whole(name);
        OwnKind before = there.isEmpty()
                ? new OwnKind(
                        draft.bench().ids().next(),
                        name,
                        name.substring(0, 1).toUpperCase(Locale.ROOT),
                        Optional.empty())
                : there.get(0);
        OwnKind kind = new OwnKind(
                before.id(),
                name,
                filled.get(LETTER).orElse(before.letter()),
                filled.get(LIKE).or(before::like));
        Lines.written("kind", name, there.isEmpty(), draft);
        draft.means("labels begin with " + kind.letter());
        kind.like()
                .ifPresentOrElse(
                        like -> draft.means("with the figures of " + like),
                        () -> draft.remark(
                                "assumed-figures",
                                "No kind is named that it is like: figures of hardy bulbs are assumed."));
        draft.change(new WriteDown(kind));
    }
}
