// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sillbook.model.Findings;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Trouble;
import sillbook.model.Id;
import sillbook.model.Purchase;
import sillbook.model.Settings.LengthUnit;
import sillbook.words.Entries;

/** What a line says was found of dry bulbs. */
final class DryBulbsSeen {
    private static final Set<Trouble> SPREADS = Set.of(Trouble.MOULD, Trouble.ROT);

    private DryBulbsSeen() {}

    /** Adds it to what was felt; asks where nothing is said that dry bulbs can be. */
    static void of(List<Purchase> bulbs, Findings seen, Map<Id<Purchase>, Findings> felt, Draft draft) {
        Findings findings = seen.ofDryBulbs();
        LengthUnit unit = draft.bench().journal().settings().lengths();
        bulbs.forEach(purchase -> felt.put(purchase.id(), findings));
        bulbs.stream().map(purchase -> whose(purchase, draft)).distinct().forEach(whose -> {
            if (findings.equals(Findings.NOTHING)) {
                draft.ask(
                        "firm or soft?",
                        "How are the dry " + whose + "? Write firm, soft, mould, or trouble with a few words.");
            }
            draft.means(whose + " " + Entries.findings(findings, unit));
            sayWhatToDo(findings, whose, draft);
        });
    }

    /** Of two purchases of a variety that is said once. */
    private static String whose(Purchase purchase, Draft draft) {
        return "bulbs of "
                + Lines.quoted(draft.bench()
                        .journal()
                        .varieties()
                        .get(purchase.variety())
                        .name());
    }

    private static void sayWhatToDo(Findings findings, String whose, Draft draft) {
        boolean isSoft = findings.firmness().filter(Firmness.SOFT::equals).isPresent();
        if (isSoft || !Collections.disjoint(findings.troubles(), SPREADS)) {
            draft.remark(
                    "unsound-bulbs",
                    "Throw out what is soft or mouldy of the " + whose
                            + " before it spreads, and correct their count.");
        }
    }
}
