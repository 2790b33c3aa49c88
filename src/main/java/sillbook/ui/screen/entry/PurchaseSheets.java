// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Arrival;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Days;
import sillbook.words.Lengths;
import sillbook.words.Prices;
import sillbook.words.PurchaseWords;
import sillbook.words.Weeks;

/** Forms of bulbs bought. */
final class PurchaseSheets {
    private static final Part BULBS = Part.of("Bulbs", 10, "", "How many came; if fewer than ordered, both: 27 of 30.")
            .wanted();
    private static final Part OF = Part.of(
                    "Variety", 40, "", "Which variety; a new one with its kind: Lintel Smoke (daffodil).")
            .following()
            .wanted()
            .making();
    private static final Part GRADE = Part.of("Grade", 12, "grade ", "As the packet prints it: 12+, 11/12, DN I.")
            .phrase();
    private static final Part ACROSS = Part.of("Measured", 12, "", "Measured across, if you did: 3.8 cm.");
    private static final Part PRICE = Part.of("Price", 12, "price ", "What they cost altogether: 9.50.");
    private static final Part SUPPLIER =
            Part.of("From", 30, "from ", "Who sold them.").phrase();
    private static final Part ORIGIN = Part.of("Grown in", 30, "grown in ", "Where they were grown, if it is said.")
            .phrase();
    private static final Part COUNTED = Part.of(
            "Looked at", 30, "", "Counted on arrival: 24 firm, 2 soft, 1 mould. Throw soft and mouldy ones out.");
    private static final Part ARRIVAL = Part.of("Arrived", 30, "", "Their state in your own words: a bit dry.")
            .phrase();
    private static final Part COOLED =
            Part.of("Cooled", 12, "cooled ", "Weeks they were cooled before they came: 6 weeks, or unknown.");
    private static final Part WAITS =
            Part.of("Wait in", 24, "", "Where they wait to be potted.").phrase();
    private static final Part DAY = Part.of("Bought", 20, "", "The day: today, 2 sep, about 10 aug.");
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private static final Part CAME = Part.of("Came", 10, "", "How many came: 27 of 30, or all if you leave it empty.")
            .following();
    private static final Part SENT = Part.of(
                    "Sent", 40, "sent ", "The variety that came, if another was sent; a new one with its kind.")
            .making();
    private static final Part CAME_ON = Part.of("On", 20, "", "The day they came: today, yesterday, 20 aug.");

    private PurchaseSheets() {}

    /** Bulbs bought, perhaps of a variety that is known already. */
    static LineSheet fresh(Optional<Variety> of) {
        Answers known = Answers.NONE.with(DAY.blank(), "today");
        Answers filled = of.map(variety -> known.with(OF.blank(), "'" + variety.name() + "'"))
                .orElse(known);
        Part bulbs = BULBS.following();
        return LineSheet.of(
                        "New purchase",
                        "new purchase",
                        "bought",
                        List.of(
                                bulbs, OF, GRADE, ACROSS, PRICE, SUPPLIER, ORIGIN, COUNTED, ARRIVAL, COOLED, WAITS, DAY,
                                NOTE))
                .filled(filled);
    }

    /** Bulbs ordered have come. */
    static LineSheet arrived(Journal journal, Purchase ordered) {
        String name = name(journal, ordered);
        return LineSheet.of(
                        "Arrived: " + ordered.count() + " '" + name + "' ordered",
                        "arrived " + ordered.id(),
                        "arrived '" + name + "'",
                        List.of(CAME.after(", "), COUNTED, ARRIVAL, SENT, WAITS, CAME_ON, NOTE))
                .filled(Answers.NONE.with(CAME_ON.blank(), "today"))
                .over(others(journal, ordered).toArray(Edit[]::new))
                .recording();
    }

    static LineSheet correct(Journal journal, Purchase purchase) {
        String name = name(journal, purchase);
        Answers now = Answers.NONE
                .with(BULBS.blank(), PurchaseWords.came(purchase))
                .with(GRADE.blank(), purchase.grade().printed())
                .with(ACROSS.blank(), across(journal, purchase))
                .with(PRICE.blank(), purchase.price().map(Prices::say).orElse(""))
                .with(SUPPLIER.blank(), purchase.supplier())
                .with(ORIGIN.blank(), purchase.origin())
                .with(COUNTED.blank(), counted(purchase.arrival()))
                .with(ARRIVAL.blank(), purchase.arrival().note())
                .with(
                        COOLED.blank(),
                        purchase.cooled().weeks().map(Weeks::number).orElse(""))
                .with(WAITS.blank(), waits(journal, purchase))
                .with(DAY.blank(), Days.full(purchase.day()))
                .with(NOTE.blank(), purchase.note());
        return LineSheet.of(
                        "Correct the purchase of '" + name + "'",
                        "correct purchase " + purchase.id(),
                        "purchase '" + name + "'",
                        List.of(
                                BULBS, GRADE, ACROSS, PRICE, SUPPLIER, ORIGIN, COUNTED, ARRIVAL, COOLED, WAITS, DAY,
                                NOTE))
                .filled(now)
                .over(alone(journal, purchase));
    }

    private static String name(Journal journal, Purchase purchase) {
        return journal.varieties().get(purchase.variety()).name();
    }

    private static String counted(Arrival arrival) {
        List<String> counted = new ArrayList<>();
        arrival.firm().ifPresent(bulbs -> counted.add(bulbs + " firm"));
        arrival.soft().ifPresent(bulbs -> counted.add(bulbs + " soft"));
        arrival.mouldy().ifPresent(bulbs -> counted.add(bulbs + " mould"));
        return String.join(", ", counted);
    }

    private static String across(Journal journal, Purchase purchase) {
        return purchase.grade()
                .across()
                .map(across -> Lengths.say(across, journal.settings().lengths()))
                .orElse("");
    }

    private static String waits(Journal journal, Purchase purchase) {
        return purchase.waits().map(place -> journal.places().get(place).name()).orElse("");
    }

    /** The line means the last purchase of its variety, so the others are taken away while it is read. */
    private static List<Edit> others(Journal journal, Purchase purchase) {
        List<Edit> edits = new ArrayList<>();
        journal.purchases().all().stream()
                .filter(other -> other.variety().equals(purchase.variety()) && !other.equals(purchase))
                .forEach(other -> edits.add(new Edit.Remove(other)));
        return edits;
    }

    private static Edit[] alone(Journal journal, Purchase purchase) {
        List<Edit> edits = others(journal, purchase);
        Arrival bare = new Arrival(
                Optional.empty(),
                purchase.arrival().insteadOf(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        edits.add(new Edit.Put(new Purchase(
                purchase.id(),
                purchase.variety(),
                purchase.season(),
                purchase.day(),
                purchase.count(),
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                bare,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                purchase.state(),
                "")));
        return edits.toArray(Edit[]::new);
    }
}
