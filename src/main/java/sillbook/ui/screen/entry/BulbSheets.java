// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import sillbook.model.Edit;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Variety;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/** Forms of varieties. */
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
    private static final Part SEASON = Part.of(
            "Flowers", 12, "", "When it flowers among its kind, as the catalogue says: early, mid season, late.");
    private static final Part COLOUR =
            Part.of("Colour", 24, "colour ", "In your own words.").phrase();
    private static final Part SCENT = Part.of("Scent", 16, "", "Unscented, lightly scented or scented.");
    private static final Part PACKET =
            Part.of("Packet", 12, "packet ", "What the packet says of flowering indoors: yes or no.");
    private static final Part FOR_POTS = Part.of(
            "In pots", 16, "", "Your own mark, over what its class says: suits pots, tall for pots, not for pots.");
    private static final Part SOLD_AS = Part.of("Sold as", 40, "sold as ", "The name on the packet, if it is another.")
            .phrase();
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private BulbSheets() {}

    static LineSheet variety() {
        return LineSheet.of(
                "New variety",
                "new variety",
                "variety",
                List.of(NAME, KIND, HEIGHT, SEASON, COLOUR, SCENT, PACKET, FOR_POTS, SOLD_AS, NOTE));
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
                .with(SEASON.blank(), season(variety.bloomSeason()))
                .with(PACKET.blank(), packet(variety))
                .with(FOR_POTS.blank(), mark(variety.forPots()))
                .with(SOLD_AS.blank(), variety.packetName())
                .with(NOTE.blank(), variety.note());
        return LineSheet.of(
                        "Correct '" + variety.name() + "'",
                        "correct " + variety.name(),
                        "variety '" + variety.name() + "'",
                        List.of(RENAMED, KIND, HEIGHT, SEASON, COLOUR, SCENT, PACKET, FOR_POTS, SOLD_AS, NOTE))
                .filled(now)
                .over(new Edit.Put(Variety.of(variety.id(), variety.name(), variety.kind())));
    }

    private static String season(Variety.BloomSeason season) {
        return season == Variety.BloomSeason.NOT_SAID ? "" : Terms.BLOOM_SEASONS.say(season);
    }

    private static String mark(Variety.ForPots mark) {
        return mark == Variety.ForPots.NOT_MARKED ? "" : Terms.FOR_POTS.say(mark);
    }

    private static String packet(Variety variety) {
        return switch (variety.packetForcing()) {
            case NOT_STATED -> "";
            case YES -> "yes";
            case NO -> "no";
        };
    }
}
