// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.words.list.ListSort.VARIETIES;
import static sillbook.words.list.Lists.after;
import static sillbook.words.list.Lists.book;
import static sillbook.words.list.Lists.read;
import static sillbook.words.list.Lists.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Journal;
import sillbook.model.Variety;

class VarietyListTest {
    private static final String[] TWO_ROWS = {
        "Name;Kind;Class;Height;Bloom_Season;Colour;Scent;Forcing;Own-mark;Sold as;Notes",
        "'Marrow Lane';tulip;triumph;45,5;mid;red;none;yes;suits pots;Marrowlane;from the market",
        "Blue Postcard;crocus;;;;;;;;;"
    };

    @Test
    void everyColumnIsReadAndSaidBack() {
        assertThat(said(read(book(), VARIETIES, TWO_ROWS)))
                .containsExactly(
                        "2 new 'Marrow Lane': tulip Triumph; 46 cm; mid season; red; no scent; packet says yes; suits pots;"
                                + " Marrowlane; from the market",
                        "3 new 'Blue Postcard': crocus");
    }

    @Test
    void whatIsSaidBackIsWhatIsWritten() {
        Journal after = after(book(), read(book(), VARIETIES, TWO_ROWS));

        assertThat(after.varieties().all())
                .filteredOn(variety -> variety.name().equals("Marrow Lane"))
                .singleElement()
                .satisfies(lane -> {
                    assertThat(lane.kind()).hasToString("tulip Triumph");
                    assertThat(lane.height().orElseThrow().centimetres()).isEqualTo(45.5);
                    assertThat(lane.bloomSeason()).isEqualTo(Variety.BloomSeason.MID);
                    assertThat(lane.colour()).isEqualTo("red");
                    assertThat(lane.scent()).isEqualTo(Variety.Scent.NONE);
                    assertThat(lane.packetForcing()).isEqualTo(Variety.PacketForcing.YES);
                    assertThat(lane.forPots()).isEqualTo(Variety.ForPots.SUITS);
                    assertThat(lane.packetName()).isEqualTo("Marrowlane");
                    assertThat(lane.note()).isEqualTo("from the market");
                });
    }

    @Test
    void broughtInAgainItIsTheSame() {
        ListReading first = read(book(), VARIETIES, TWO_ROWS);
        ListReading again = read(after(book(), first), VARIETIES, TWO_ROWS);

        assertThat(again.rows()).extracting(ListedRow::outcome).containsOnly(Outcome.SAME);
        assertThat(again.change()).isEmpty();
        assertThat(again.hindrance()).contains("All that the list says is in the book already.");
    }

    @Test
    void whatIsOtherChangesAndAnEmptyCellDoesNot() {
        Journal known = after(book(), read(book(), VARIETIES, TWO_ROWS));
        ListReading other =
                read(known, VARIETIES, "name;kind;height;colour;packet", "marrow lane;tulip;50;;not stated");

        assertThat(said(other))
                .containsExactly("2 changed 'Marrow Lane': 50 cm, was 46 cm; no packet, was packet says yes");
        assertThat(after(known, other).varieties().all())
                .extracting(Variety::colour)
                .contains("red");
    }

    @Test
    void aKindIsNotNeededOfAVarietyInTheBook() {
        assertThat(said(read(book(), VARIETIES, "name;scent", "inkwell;strong")))
                .containsExactly("2 changed 'Inkwell': strongly scented");
    }

    @Test
    void aClassAloneChangesNoKind() {
        assertThat(said(read(book(), VARIETIES, "name;class", "Inkwell;6"))).containsExactly("2 same 'Inkwell'");
    }

    @Test
    void theSameNameInAnotherKindIsAnotherVariety() {
        assertThat(said(read(book(), VARIETIES, "name;kind", "Inkwell;iris", "Inkwell;")))
                .containsExactly(
                        "2 new 'Inkwell': dwarf iris",
                        "3 wrong 'Inkwell': kind: there is more than one 'Inkwell' in the book. Write the kind of the one"
                                + " meant.");
    }

    @Test
    void aVarietyTwiceMaySayTheSameButNotOtherwise() {
        assertThat(said(read(
                        book(),
                        VARIETIES,
                        "name;kind;colour",
                        "Marrow Lane;tulip;red",
                        "Marrow Lane;tulip;red",
                        "Marrow Lane;tulip;pink")))
                .containsExactly(
                        "2 new 'Marrow Lane': tulip; red",
                        "3 same 'Marrow Lane'",
                        "4 wrong 'Marrow Lane': name: row 2 is about the same, and says otherwise: pink, was red. Leave one"
                                + " of the two.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind   | turnip | 'turnip' is no kind of bulb. Did you mean tulip?",
                "class  | zzz    | 'tulip zzz' is no kind of bulb. Write one as tulip triumph, daffodil 6 or crocus; kind and"
                        + " a name makes a new one.",
                "height | tall   | 'tall' is no length. Write it as 19, 19 cm or 7.5in.",
                "season | spring | 'spring' is no time of flower. Write season not said, early, mid season or late.",
                "scent  | foul   | 'foul' is no scent. Write scent not said, no scent, lightly scented, strongly scented,"
                        + " none or light.",
                "packet | maybe  | 'maybe' is no word of the packet. Write not stated, yes or no.",
                "for pots | very | 'very' is no mark for pots. Write no mark for pots, suits pots, tall for pots or not for"
                        + " pots."
            })
    void aBadCellIsNamedWithWhatWouldBeRight(String column, String cell, String sentence) {
        String kind = column.equals("kind") ? "" : "kind;";
        String tulip = column.equals("kind") ? "" : "tulip;";
        ListReading reading = read(book(), VARIETIES, "name;" + kind + column, "Marrow Lane;" + tulip + cell);

        assertThat(reading.rows().get(0).bad()).containsExactly(new BadCell(column, cell, sentence));
        assertThat(reading.change()).isEmpty();
    }

    @Test
    void allThatIsWrongInARowIsToldAtOnce() {
        assertThat(said(read(book(), VARIETIES, "name;height;packet", ";tall;maybe", "'';;", "x'y;;")))
                .containsExactly(
                        "2 wrong name: it is empty, and should hold the variety's name, with or without quotes.",
                        "2 wrong height: 'tall' is no length. Write it as 19, 19 cm or 7.5in.",
                        "2 wrong packet: 'maybe' is no word of the packet. Write not stated, yes or no.",
                        "3 wrong name: '''' is no name. Write the variety's, as Marrow Lane.",
                        "4 wrong 'x'y': kind: 'x'y' is not in the book yet. Write its kind too, as tulip triumph.");
    }

    @Test
    void anEndlessCellIsWrong() {
        ListReading reading = read(book(), VARIETIES, "name;note", "Inkwell;" + "a".repeat(1001));

        assertThat(said(reading))
                .containsExactly("2 wrong 'Inkwell': note: it is longer than 1000 letters. Shorten it.");
    }
}
