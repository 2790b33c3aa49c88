// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import sillbook.change.WriteDown;
import sillbook.model.Pot;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.words.Days;
import sillbook.words.Feasts;
import sillbook.words.plan.WishWords;

/** {@code wish tulip 30 jan}: what should flower when. */
final class WishForm implements Form {
    static final Slot<WishedDays> DAYS = Slot.one("day", WishedDays.SENSE);
    private static final List<Slot<?>> SLOTS = Stream.of(
                    List.of(Slots.POTS, DAYS), WishAsks.SLOTS, List.<Slot<?>>of(Slots.NOTE))
            .flatMap(List::stream)
            .toList();

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "wish",
                "A kind or pots, and the day, the days, or the feast they should flower on; every day, for flowers on each of them; then how "
                        + "many pots, scented, colour and the colour, up to 30 cm, how far (buds in colour, first open, full), the place they stand at, note.",
                "wish tulip 30 jan",
                "wish T4 T5 for easter",
                "wish crocus, 2 to 9 mar",
                "wish something every day 10 jan to 25 mar",
                "wish 3 scented pots 14 feb, up to 30 cm, parlour sill");
    }

    @Override
    public List<String> keywords() {
        return List.of("wish");
    }

    @Override
    public List<Slot<?>> slots() {
        return SLOTS;
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(DAYS) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        WishedFor asks = new WishAsks(filled).all();
        draft.means("in flower: " + whose(pots, asks, draft));
        filled.get(DAYS)
                .ifPresentOrElse(
                        days -> wish(days, pots, asks, filled, draft),
                        () -> draft.ask(
                                "which day?", "For which day? Write it too, as 30 jan, or a feast, as for easter."));
    }

    private static String whose(List<Pot> pots, WishedFor asks, Draft draft) {
        String said = new WishWords(draft.bench().journal()).asks(asks);
        if (pots.isEmpty()) {
            return said.isEmpty() ? "anything" : said;
        }
        return Lines.labels(pots) + (said.isEmpty() ? "" : ", " + said);
    }

    private static void wish(WishedDays days, List<Pot> pots, WishedFor asks, Filled filled, Draft draft) {
        LocalDate from = days.span().start();
        LocalDate to = days.span().last();
        String on = asks.isEveryDay() ? "every day, " : "on ";
        draft.means(on + days.says() + ", " + Days.away(from, draft.bench().today()));
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
                asks,
                new HashSet<>(Lines.ids(pots)),
                filled.get(Slots.NOTE).orElse(""))));
    }
}
