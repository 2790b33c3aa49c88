// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.change.Succession;
import sillbook.model.Day;
import sillbook.model.Pot;
import sillbook.words.Days;

/** {@code again P1 every 12 days until 1 mar}: pots like one that is there, one after the other. */
final class SuccessionForm implements Form {
    private static final Slot<Integer> EVERY = Slot.one("days between", Senses.number("every (\\d{1,3}) ?(?:days?|d)"));
    /** Without its every so many days a line is hardly ever one of these. */
    private static final int SELDOM = 2;

    /** More days than a winter has are not told. */
    private static final int MOST_TOLD = 26;

    private static final Slot<Boolean> AGAIN = Slot.one("", Senses.flag("again"));
    private static final Slot<Boolean> UNTIL = Slot.one("", Senses.flag("until|till|up to"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "row",
                "A pot, every so many days, until a day: pots like it wait each for its day to be potted, so that one flowers "
                        + "after the other.",
                "P1 again every 12 days until 1 mar");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, AGAIN, EVERY, UNTIL, Slots.COMING_DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) ? 0 : 1) + (filled.has(EVERY) ? 0 : SELDOM);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        if (pots.size() != 1) {
            draft.ask(
                    "like which pot?",
                    "Like which pot? Name one by its label, as: P1 again every 12 days until 1 mar.");
            return;
        }
        Optional<LocalDate> until = filled.get(Slots.COMING_DAY).map(Day::likely);
        draft.means("like " + pots.get(0).label() + ", "
                + Lines.contents(pots.get(0), draft.bench().journal()));
        if (until.isEmpty()) {
            draft.ask("until when?", "Until when? Write the last day of potting too, as: until 1 mar.");
        }
        until.ifPresent(day -> row(pots.get(0), filled.get(EVERY).orElse(0), day, draft));
    }

    private static void row(Pot model, int every, LocalDate until, Draft draft) {
        Succession change = new Succession(model.id(), every, until);
        List<LocalDate> days = every < Succession.LEAST_DAYS
                ? List.of()
                : change.days(draft.bench().journal(), draft.bench().hand());
        if (!days.isEmpty() && days.size() <= MOST_TOLD) {
            draft.means("to be potted " + days.stream().map(Days::date).collect(Collectors.joining(", ")));
        }
        draft.change(change);
    }
}
