// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.season.Outlook;
import sillbook.season.Suiting;
import sillbook.season.VarietyNow;
import sillbook.words.Counts;
import sillbook.words.Lengths;
import sillbook.words.PotNames;
import sillbook.words.PurchaseWords;
import sillbook.words.RecordWords;
import sillbook.words.SuitingWords;

/** Varieties and purchases as plain lines. */
record BulbText(Journal journal, Outlook outlook) {

    /** {@code 'Marrow Lane': tulip triumph, 45 cm; 12 bulbs in hand; ▪3.7 of 7 pots; 2025-26 ▪2.5 of 2 pots: 3, 2}. */
    String line(VarietyNow now) {
        List<String> facts = new ArrayList<>();
        facts.add(kindAndHeight(now.variety()));
        if (now.inHand() > 0) {
            facts.add(Counts.of(now.inHand(), "bulb") + " in hand");
        }
        facts.add(RecordWords.total(now));
        now.winters().forEach(winter -> facts.add(season(winter) + " " + RecordWords.winter(winter)));
        return "'" + now.variety().name() + "': " + String.join("; ", facts);
    }

    /** {@code 'Marrow Lane': tulip triumph, 45 cm; first: Triumph suits pots (▫).} */
    String forPots(VarietyNow now) {
        Variety variety = now.variety();
        Suiting suiting = outlook.suiting(variety);
        String why = new SuitingWords(Handbook.standard(), journal.settings())
                .why(variety, suiting)
                .map(says -> ": " + says)
                .orElse("");
        return "'" + variety.name() + "': " + kindAndHeight(variety) + "; "
                + SuitingWords.STANDINGS.say(suiting.standing()) + why;
    }

    private String kindAndHeight(Variety variety) {
        return variety.kind()
                + variety.height()
                        .map(tall -> ", " + Lengths.say(tall, journal.settings().lengths()))
                        .orElse("");
    }

    private String season(VarietyNow.Winter winter) {
        return journal.nameOf(winter.season());
    }

    /** {@code purchase of 'Marrow Lane': 60 bulbs, in hand; Mon 14 Sep 2026; grade 12+}. */
    String line(Purchase purchase) {
        String whole = new PurchaseWords(journal).whole(purchase);
        return "purchase of " + new PotNames(journal).variety(purchase.variety()) + ": " + whole;
    }
}
