// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.words.Days;
import sillbook.words.Feasts;

/** {@code wish tulip 30 jan}: what should flower when. */
final class WishForm implements Form {
    static final Slot<WishedDays> DAYS = Slot.one("day", WishedDays.SENSE);

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "wish",
                "A kind or pots, and the day, the days, or the feast they should flower on; note, if you like.",
                "wish tulip 30 jan",
                "wish T4 T5 for easter",
                "wish crocus, 2 to 9 mar");
    }

    @Override
    public List<String> keywords() {
        return List.of("wish");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, DAYS, Slots.KIND, Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(DAYS) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Optional<Kind> kind = filled.get(Slots.KIND);
        String whose = pots.isEmpty() ? kind.map(Kind::toString).orElse("anything") : Lines.labels(pots);
        draft.means("in flower: " + whose);
        filled.get(DAYS)
                .ifPresentOrElse(
                        days -> wish(days, pots, filled, draft),
                        () -> draft.ask(
                                "which day?", "For which day? Write it too, as 30 jan, or a feast, as for easter."));
    }

    private static void wish(WishedDays days, List<Pot> pots, Filled filled, Draft draft) {
        LocalDate from = days.span().start();
        LocalDate to = days.span().endExclusive().minusDays(1);
        draft.means("on " + days.says() + ", " + Days.away(from, draft.bench().today()));
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
        if (to.isBefore(draft.bench().today())) {
            draft.ask("past already", Days.full(to) + " is past already. Write a day to come, as +30 or 30 jan.");
        }
        draft.change(new WriteDown(new Wish(
                draft.bench().ids().next(),
                draft.bench().journal().seasonOf(from),
                from,
                to,
                days.feast().map(Feasts.ALL::say).orElse(""),
                WishedFor.one(filled.get(Slots.KIND)),
                new HashSet<>(Lines.ids(pots)),
                filled.get(Slots.NOTE).orElse(""))));
    }
}
