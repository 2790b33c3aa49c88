// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Arrival;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Variety;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Days;
import sillbook.words.Lengths;
import sillbook.words.Prices;
import sillbook.words.Terms;
import sillbook.words.Weeks;

/** Forms of varieties and of bulbs bought. */
final class BulbSheets {
    private static final Part NAME = Part.of("Name", 40, "", "The cultivar's name, without quotes.")
            .following()
            .wanted()
            .phrase();
    private static final Part RENAMED = Part.of("Name", 40, "called ", "The cultivar's name, without quotes.")
            .phrase();
    private static final Part KIND = Part.of(
                    "Kind", 30, "", "Its kind, and its class or division if you know it: tulip triumph.")
            .wanted();
    private static final Part HEIGHT = Part.of("Height", 12, "", "Full height in flower: 45 cm, 18in.");
    private static final Part COLOUR =
            Part.of("Colour", 24, "colour ", "In your own words.").phrase();
    private static final Part SCENT = Part.of("Scent", 16, "", "Unscented, lightly scented or scented.");
    private static final Part PACKET =
            Part.of("Packet", 12, "packet ", "What the packet says of flowering indoors: yes or no.");
    private static final Part SOLD_AS = Part.of("Sold as", 40, "sold as ", "The name on the packet, if it is another.")
            .phrase();
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private static final Part COUNT =
            Part.of("Bulbs", 6, "", "How many bulbs.").following().wanted();
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
    private static final Part ARRIVAL = Part.of("Arrived", 30, "", "Their state on arrival: firm, soft, some mould.")
            .phrase();
    private static final Part COOLED =
            Part.of("Cooled", 12, "cooled ", "Weeks they were cooled before they came: 6 weeks, or unknown.");
    private static final Part WAITS =
            Part.of("Wait in", 24, "", "Where they wait to be potted.").phrase();
    private static final Part DAY = Part.of("Bought", 20, "", "The day: today, 2 sep, about 10 aug.");

    private BulbSheets() {}

    static LineSheet variety() {
        return LineSheet.of(
                "New variety",
                "new variety",
                "variety",
                List.of(NAME, KIND, HEIGHT, COLOUR, SCENT, PACKET, SOLD_AS, NOTE));
    }

    static LineSheet correct(Variety variety, LengthUnit unit) {
        Answers now = Answers.NONE
                .with(RENAMED.blank(), variety.name())
                .with(KIND.blank(), variety.kind().toString())
                .with(
                        HEIGHT.blank(),
                        variety.height()
                                .map(height -> Lengths.say(height, unit))
                                .orElse(""))
                .with(COLOUR.blank(), variety.colour())
                .with(SCENT.blank(), variety.scent() == Variety.Scent.NOT_SAID ? "" : Terms.SCENTS.say(variety.scent()))
                .with(PACKET.blank(), packet(variety))
                .with(SOLD_AS.blank(), variety.packetName())
                .with(NOTE.blank(), variety.note());
        return LineSheet.of(
                        "Correct '" + variety.name() + "'",
                        "correct " + variety.name(),
                        "variety '" + variety.name() + "'",
                        List.of(RENAMED, KIND, HEIGHT, COLOUR, SCENT, PACKET, SOLD_AS, NOTE))
                .filled(now)
                .over(new Edit.Put(Variety.of(variety.id(), variety.name(), variety.kind())));
    }

    private static String packet(Variety variety) {
        return switch (variety.packetForcing()) {
            case NOT_STATED -> "";
            case YES -> "yes";
            case NO -> "no";
        };
    }

    /** Bulbs bought, perhaps of a variety that is known already. */
    static LineSheet purchase(Optional<Variety> of) {
        Answers known = Answers.NONE.with(DAY.blank(), "today");
        Answers filled = of.map(variety -> known.with(OF.blank(), "'" + variety.name() + "'"))
                .orElse(known);
        return LineSheet.of(
                        "New purchase",
                        "new purchase",
                        "bought",
                        List.of(COUNT, OF, GRADE, ACROSS, PRICE, SUPPLIER, ARRIVAL, COOLED, WAITS, DAY, NOTE))
                .filled(filled);
    }

    static LineSheet correct(Journal journal, Purchase purchase) {
        String name = journal.varieties().get(purchase.variety()).name();
        Part count = Part.of("Bulbs", 6, "", "How many bulbs.").wanted();
        Answers now = Answers.NONE
                .with(count.blank(), Integer.toString(purchase.count()))
                .with(GRADE.blank(), purchase.grade().printed())
                .with(ACROSS.blank(), across(journal, purchase))
                .with(PRICE.blank(), purchase.price().map(Prices::say).orElse(""))
                .with(SUPPLIER.blank(), purchase.supplier())
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
                        List.of(count, GRADE, ACROSS, PRICE, SUPPLIER, ARRIVAL, COOLED, WAITS, DAY, NOTE))
                .filled(now)
                .over(alone(journal, purchase));
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
    private static Edit[] alone(Journal journal, Purchase purchase) {
        List<Edit> edits = new ArrayList<>();
        journal.purchases().all().stream()
                .filter(other -> other.variety().equals(purchase.variety()) && !other.equals(purchase))
                .forEach(other -> edits.add(new Edit.Remove(other)));
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
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                purchase.state(),
                "")));
        return edits.toArray(Edit[]::new);
    }
}
