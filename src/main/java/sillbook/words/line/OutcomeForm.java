// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Close;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.words.Complaint;
import sillbook.words.Terms;

/** {@code T4 score 4, 5 of 5 flowers, note ...}: how pots did; the end of their winter may be said with it. */
final class OutcomeForm implements Form {
    private static final Complaint NOTHING =
            new Complaint("how did it do?", "How did it do? Write a score from 1 to 5, what was seen, or a note.");

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "outcome",
                "Pots, score 1 to 5; then how many flowers, height, good from and to, the flowers even, spread or ragged, "
                        + "scent none, light or strong, again yes, no or differently and how; "
                        + "of a failed one its signs, the roots, a cut bud and the cause, or cause left open; and how their winter ended. "
                        + "Of a mixed pot the variety may be named.",
                "T4 score 4, 5 of 5 flowers, note short but sweet",
                "T4 outcome 4, even, scent strong, again differently: in the fridge",
                "T4 done, score 5, 45 cm, good 26 dec to 8 jan, again yes",
                "T5 failed, rot, roots brown, cut bud soft and grey, cause frozen");
    }

    @Override
    public List<Slot<?>> slots() {
        List<Slot<?>> slots = new ArrayList<>(List.of(Slots.POTS, CloseForm.END, Slots.VARIETY));
        slots.addAll(OutcomeFacts.SLOTS);
        return slots;
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) ? 0 : 1) + (new OutcomeFacts(filled).isAny() ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Lines.pots(pots, draft);
        Optional<Id<Variety>> variety = filled.get(Slots.VARIETY).map(Variety::id);
        filled.get(Slots.VARIETY).ifPresent(one -> {
            draft.means("of " + Lines.quoted(one.name()));
            Lines.holding(one, pots, draft);
        });
        new OutcomeFacts(filled).say(draft);
        List<Change> changes = new ArrayList<>();
        filled.get(CloseForm.END).ifPresent(end -> {
            Lines.happened(Terms.ENDS.say(end), filled, draft);
            changes.add(new Close(Lines.ids(pots), end, "", Slots.day(filled, draft.bench())));
        });
        for (Pot pot : pots) {
            Outcome before =
                    before(pot, variety.filter(one -> pot.isMixed()), Slots.day(filled, draft.bench()), draft.bench());
            changes.add(new WriteDown(new OutcomeFacts(filled).over(before)));
        }
        new OutcomeFacts(filled).tooMany(pots, variety).ifPresent(draft::ask);
        new ImpressionFacts(filled).atOdds().ifPresent(draft::ask);
        if (!new OutcomeFacts(filled).isAny()) {
            draft.ask(NOTHING);
        }
        if (!pots.isEmpty()) {
            draft.change(changes.size() == 1 ? changes.get(0) : new Together(name(pots, filled), changes));
        }
    }

    private static String name(List<Pot> pots, Filled filled) {
        String end = filled.get(CloseForm.END)
                .map(how -> " " + Terms.ENDS.say(how) + ",")
                .orElse("");
        return Lines.labels(pots) + end + " outcome written down";
    }

    /** What is written already of the winter of that day. */
    private static Outcome before(Pot pot, Optional<Id<Variety>> variety, Day day, Bench bench) {
        return bench.outlook().livingOn().outcomes(pot.id(), day.likely()).stream()
                .filter(outcome -> outcome.variety().equals(variety))
                .findFirst()
                .orElseGet(() -> Outcome.notJudged(bench.ids().next(), pot.id(), variety, Day.on(bench.today())));
    }
}
