// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.FlowerStage;
import sillbook.model.WishedFor.Manner;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.WishTerms;

/** What a line asks for in a wish, beside its days. */
record WishAsks(Filled filled) {
    static final Slot<Boolean> EVERY_DAY = Slot.one("", Senses.flag("(?:on )?(?:every|each) day(?: of| from)?|daily"));
    private static final Slot<Boolean> ANYTHING = Slot.one("", Senses.flag("anything|something"));
    private static final Slot<Integer> POTS =
            Slot.one("", Senses.matching("(\\d{1,6}) pots?", said -> pots(said.number(1))));

    /** How many are to be so may stand before it. */
    private static final Slot<Integer> SCENTED = Slot.one(
            "",
            Senses.matching(
                    "(?:(\\d{1,6}) )?scented(?: pots?)?", said -> said.has(1) ? pots(said.number(1)) : Heard.as(1)));

    private static final Slot<String> COLOUR = Slot.one("", Senses.phraseAfter("colour", "color"));
    private static final Slot<Length> TALLEST = Slot.one("", Senses.longest((words, bench) -> tallest(words)));
    private static final Slot<FlowerStage> STAGE = Slot.one("stage of flowers", Senses.oneOf(WishTerms.STAGES));
    private static final Slot<Place> ROOM = Slot.one(
            "place",
            Senses.any(List.of(
                    Slots.PLACE.sense(),
                    new LedSense<>(List.of("in the", "on the", "at the", "in", "on", "at"), Slots.PLACE.sense()))));

    static final List<Slot<?>> SLOTS =
            List.of(EVERY_DAY, ANYTHING, POTS, SCENTED, COLOUR, TALLEST, STAGE, Slots.KIND, ROOM);

    private static Heard<Integer> pots(int pots) {
        return pots >= 1 && pots <= WishedFor.MOST_POTS
                ? Heard.as(pots)
                : Heard.not(
                        "1 to " + WishedFor.MOST_POTS + " pots",
                        "Nobody wishes for " + pots + " pots at once. Write 1 to " + WishedFor.MOST_POTS
                                + ", as: 3 pots.");
    }

    /** {@code up to 30 cm}. */
    private static Optional<Heard<Length>> tallest(String words) {
        String said = Fold.of(words);
        for (String lead : List.of("up to ", "at most ", "under ")) {
            String length = words.substring(Math.min(lead.length(), words.length()));
            if (said.startsWith(lead) && Lengths.isSure(length)) {
                return Optional.of(Lengths.parse(length).then(WishAsks::some));
            }
        }
        return Optional.empty();
    }

    private static Heard<Length> some(Length length) {
        return length.tenths() > 0
                ? Heard.as(length)
                : Heard.not(
                        "a height",
                        "Nothing flowers at no height. Write the full height it may have, as: up to 30 cm.");
    }

    WishedFor all() {
        return new WishedFor(
                filled.has(EVERY_DAY) ? Manner.EVERY_DAY : Manner.SOME_DAY,
                filled.get(POTS).or(() -> filled.get(SCENTED)).orElse(1),
                filled.get(STAGE),
                filled.get(Slots.KIND),
                filled.get(COLOUR).orElse(""),
                filled.has(SCENTED),
                filled.get(TALLEST),
                filled.get(ROOM).map(Place::id));
    }
}
