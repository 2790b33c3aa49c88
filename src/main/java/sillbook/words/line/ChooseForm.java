// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.Undecided;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.past.UsualCount;
import sillbook.words.ChoiceWords;
import sillbook.words.Heard;

/** {@code choose Lantern Row x10}: so many bulbs of a variety are wanted for a season, or it is undecided again. */
final class ChooseForm implements Form {
    private static final String UNDECIDED = "undecided";

    private static final Slot<Integer> BULBS = Slot.one(
            "number of bulbs",
            Senses.matching(
                    "x ?(\\d{1,5})|(\\d{1,5})(?: bulbs?)?(?: of)?",
                    said -> Heard.as(said.number(said.has(1) ? 1 : 2))));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "choose",
                "A variety and how many bulbs of it; without a number as many as last time. Undecided takes its mark off. For and a "
                        + "season, if not the coming one.",
                "choose Lantern Row x10",
                "choose 24 Night Marbles (grape hyacinth) for 2028-29",
                "undecided Lantern Row");
    }

    @Override
    public List<String> keywords() {
        return List.of("choose", UNDECIDED);
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.ANY_VARIETY, Marking.SEASON, BULBS);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.ANY_VARIETY) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Marking marking = new Marking(filled, draft);
        if (filled.line().folded(0, 1).equals(UNDECIDED)) {
            marking.mark("undecided Lantern Row", (variety, season) -> Optional.of(new Undecided()));
        } else {
            marking.mark("choose Lantern Row x10", (variety, season) -> chosen(variety, season, filled, draft));
        }
    }

    private static Optional<Mark> chosen(Variety variety, Season season, Filled filled, Draft draft) {
        Optional<Integer> bulbs =
                (filled.has(BULBS) ? filled.get(BULBS) : usual(variety, season, draft)).filter(some -> some > 0);
        if (bulbs.isEmpty()) {
            draft.ask("how many?", "How many bulbs? Write the number too, as: choose " + variety.name() + " x10.");
        }
        return bulbs.map(Chosen::new);
    }

    /** As many as last time; the line says so. */
    private static Optional<Integer> usual(Variety variety, Season season, Draft draft) {
        Optional<UsualCount> usual =
                UsualCount.of(variety.id(), season, draft.bench().journal());
        usual.map(ChoiceWords::basis).ifPresent(draft::means);
        return usual.map(UsualCount::bulbs);
    }
}
