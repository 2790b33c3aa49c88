// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.words.list.ListSort.PURCHASES;
import static sillbook.words.list.ListSort.VARIETIES;
import static sillbook.words.list.Lists.book;
import static sillbook.words.list.Lists.heard;
import static sillbook.words.list.Lists.read;
import static sillbook.words.list.Lists.said;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.change.Together;
import sillbook.words.Complaint;
import sillbook.words.Heard;

/** What holds of every sort of list: its header, its counts, and that it is one step. */
class ListReadingTest {
    private static String complaint(Heard<ListReading> heard) {
        return heard.complaint().map(Complaint::sentence).orElseThrow();
    }

    @Test
    void columnsMayStandInAnyOrderAndUnknownOnesAreLeftOut() {
        ListReading reading = read(book(), VARIETIES, "Shelf;KIND;;Name;page", "A;tulip;x;Marrow Lane;12");

        assertThat(said(reading)).containsExactly("2 new 'Marrow Lane': tulip");
        assertThat(reading.leftOut()).containsExactly("Shelf", "page");
    }

    @Test
    void aHeaderWithoutWhatIsNeededNamesWhatMayStandThere() {
        assertThat(complaint(heard(book(), PURCHASES, "name;dat;supplier", "Inkwell;1 sep;market")))
                .startsWith(
                        "The first row names no column date or count; 'dat' may be meant for one. A list of purchases may"
                                + " have these: name, kind, class, date, count, state, ")
                .endsWith(", waits and note.");
        assertThat(complaint(heard(book(), VARIETIES, "kind", "tulip")))
                .startsWith("The first row names no column name. A");
    }

    @Test
    void aColumnTwiceIsNotGuessedAt() {
        assertThat(complaint(heard(book(), VARIETIES, "name;colour;color", "Inkwell;blue;red")))
                .isEqualTo("There are two columns for the colour. Leave one, or give the other another name.");
    }

    @Test
    void aTableWithoutRowsIsNoList() {
        assertThat(complaint(heard(book(), VARIETIES, "name")))
                .isEqualTo("There is nothing under the names of the columns. Write a row for each of the varieties.");
    }

    @Test
    void aListHasAnEnd() {
        Table.Row row = new Table.Row(2, List.of("Inkwell"));
        Table endless = new Table(List.of("name"), Collections.nCopies(ListReading.MOST_ROWS + 1, row));

        assertThat(complaint(Lists.heard(book(), VARIETIES, endless)))
                .isEqualTo("The list has 2 001 rows, and 2 000 are the most. Split it.");
    }

    @Test
    void aShortRowLacksItsLastCells() {
        assertThat(said(read(book(), VARIETIES, "name;kind;colour", "Marrow Lane;tulip")))
                .containsExactly("2 new 'Marrow Lane': tulip");
    }

    @Test
    void allOfItIsOneStepThatSaysWhatItDid() {
        ListReading reading = read(
                book(), VARIETIES, "name;kind;scent", "Marrow Lane;tulip;", "Inkwell;;strong", "Blue Postcard;iris;");

        assertThat(reading.counts()).isEqualTo("2 new, 1 changed");
        assertThat(reading.change()).get().isInstanceOfSatisfying(Together.class, step -> {
            assertThat(step.name()).isEqualTo("list of varieties imported, 2 new, 1 changed");
            assertThat(step.changes()).hasSize(3);
        });
        assertThat(reading.hindrance()).isEmpty();
    }

    @Test
    void whileARowIsWrongNothingIsBroughtIn() {
        ListReading one = read(book(), VARIETIES, "name;kind", "Marrow Lane;tulip", ";tulip");
        ListReading two = read(book(), VARIETIES, "name;kind", "Marrow Lane;tulip", ";tulip", ";iris");

        assertThat(one.change()).isEmpty();
        assertThat(one.hindrance())
                .contains("1 row is wrong, so nothing is imported. Mend the file, and import it again.");
        assertThat(two.counts()).isEqualTo("1 new, 2 wrong");
        assertThat(two.hindrance()).hasValueSatisfying(says -> assertThat(says).startsWith("2 rows are wrong,"));
    }

    @Test
    void aTableWithADateOrACountIsOneOfPurchases() {
        assertThat(ListSort.meant(Lists.table("Name;Day", "Inkwell;1 sep"))).isEqualTo(PURCHASES);
        assertThat(ListSort.meant(Lists.table("count;name", "3;Inkwell"))).isEqualTo(PURCHASES);
        assertThat(ListSort.meant(Lists.table("name;kind;height", "Inkwell;hyacinth;25")))
                .isEqualTo(VARIETIES);
    }

    @Test
    void theSortOfListIsAWord() {
        assertThat(ListSort.WORDS.find("variety")).contains(VARIETIES);
        assertThat(ListSort.WORDS.parse("bulbs").complaint())
                .hasValueSatisfying(why -> assertThat(why.sentence())
                        .isEqualTo("'bulbs' is no sort of list. Write varieties or purchases."));
    }
}
