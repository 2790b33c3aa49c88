// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Optional;
import java.util.function.BiFunction;
import sillbook.change.Choose;
import sillbook.model.Choice.Mark;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.Variety;
import sillbook.text.Fold;
import sillbook.words.ChoiceWords;
import sillbook.words.Heard;
import sillbook.words.Seasons;

/** What the lines that mark a variety for a season have in common. */
record Marking(Filled filled, Draft draft) {
    static final Slot<Season> SEASON = Slot.one("season", Senses.longest((words, bench) -> season(Fold.of(words))));

    /** {@code for 2027-28}, {@code season 2027}; a year alone could as well be a number of bulbs. */
    private static Optional<Heard<Season>> season(String words) {
        return words.matches("(?:for )?(?:season )?\\d{4}-\\d\\d|for (?:season )?\\d{4}|season \\d{4}")
                ? Optional.of(Seasons.parse(words.replaceAll("[a-z ]", "")))
                : Optional.empty();
    }

    /** The season that is named, else the coming one. */
    static Season season(Filled filled, Bench bench) {
        return filled.get(SEASON).orElseGet(() -> bench.journal().chosenFor(bench.today()));
    }

    /** The season that is named, else the one that is planned now. */
    static Season planned(Filled filled, Bench bench) {
        return filled.get(SEASON).orElseGet(() -> SeasonPlan.plannedOn(bench.today(), bench.journal()));
    }

    /**
     * Marks the variety that is named, and asks for it where none is.
     *
     * @param example a whole line that names one
     * @param mark what it is to be marked as in a season; empty where that is asked
     */
    void mark(String example, BiFunction<Variety, Season, Optional<Mark>> mark) {
        filled.get(Slots.ANY_VARIETY)
                .ifPresentOrElse(
                        variety -> mark(variety, mark),
                        () -> draft.ask("which variety?", "Which variety? Write its name, as: " + example + "."));
    }

    private void mark(Named<Variety> named, BiFunction<Variety, Season, Optional<Mark>> mark) {
        Bench bench = draft.bench();
        Variety variety = named.thing();
        Season season = season(filled, bench);
        if (named.isNew()) {
            draft.means("a new variety: " + Lines.quoted(variety.name()) + ", " + variety.kind());
        }
        draft.means(
                Lines.quoted(variety.name()) + ", for season " + bench.journal().nameOf(season));
        mark.apply(variety, season).ifPresent(given -> {
            draft.means(ChoiceWords.mark(given));
            draft.change(named.together(new Choose(variety.id(), season, given)));
        });
        bench.journal()
                .choice(variety.id(), season)
                .ifPresent(before -> draft.means("until now " + ChoiceWords.mark(before.mark())));
    }
}
