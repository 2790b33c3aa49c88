// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.words.list.ListSort.PURCHASES;
import static sillbook.words.list.Lists.after;
import static sillbook.words.list.Lists.book;
import static sillbook.words.list.Lists.read;
import static sillbook.words.list.Lists.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Variety;

class PurchaseListTest {
    private static final String HEADER =
            "name;kind;date;count;grade;across;price;supplier;origin;ordered;firm;soft;mould;"
                    + "arrival;cooled;waits;state;note";
    private static final String FULL =
            "Marrow Lane;tulip triumph;2026-09-14;27;12+;4,5;9,50;Harbour Seeds;Fenland;30;24;2;1;"
                    + "a torn box;6;cellar;in hand;ask again";

    @Test
    void everyColumnIsReadAndSaidBack() {
        assertThat(said(read(book(), PURCHASES, HEADER, FULL)))
                .containsExactly(
                        "2 new 'Marrow Lane': a new variety, tulip Triumph; Mon 14 Sep 2026; 27 bulbs; in hand; grade 12+; 4.5 cm across; 9.50;"
                                + " from Harbour Seeds; grown in Fenland; 30 ordered; 24 firm; 2 soft; 1 mould; arrived a torn box;"
                                + " cooled 6 weeks; wait in the cellar; ask again");
    }

    @Test
    void whatIsSaidBackIsWhatIsWritten() {
        Journal after = after(book(), read(book(), PURCHASES, HEADER, FULL));

        assertThat(after.varieties().all()).extracting(Variety::name).containsExactly("Inkwell", "Marrow Lane");
        assertThat(after.purchases().all()).singleElement().satisfies(bought -> {
            assertThat(bought.count()).isEqualTo(27);
            assertThat(bought.missing()).isEqualTo(3);
            assertThat(bought.sound()).isEqualTo(24);
            assertThat(bought.season()).isEqualTo(new Season(2026));
            assertThat(bought.grade().printed()).isEqualTo("12+");
            assertThat(bought.grade().across().orElseThrow().centimetres()).isEqualTo(4.5);
            assertThat(bought.price()).contains(new Purchase.Money(950, ""));
            assertThat(bought.cooled().weeks()).contains(6.0);
            assertThat(bought.waits()).isPresent();
            assertThat(bought.arrival().note()).isEqualTo("a torn box");
        });
    }

    @Test
    void broughtInAgainItIsTheSame() {
        Journal known = after(book(), read(book(), PURCHASES, HEADER, FULL));

        assertThat(said(read(known, PURCHASES, HEADER, FULL))).containsExactly("2 same 'Marrow Lane'");
    }

    @Test
    void aDayMayBeWrittenAsInLines() {
        assertThat(said(read(
                        book(),
                        PURCHASES,
                        "variety;day;bulbs",
                        "Inkwell;14 sep;6 bulbs",
                        "Inkwell;mid august;4",
                        "Inkwell;14.8.2026;1")))
                .containsExactly(
                        "2 new 'Inkwell': Mon 14 Sep 2026; 6 bulbs; in hand",
                        "3 new 'Inkwell': mid Aug 2026; 4 bulbs; in hand",
                        "4 new 'Inkwell': Fri 14 Aug 2026; 1 bulb; in hand");
    }

    @Test
    void anotherGradeIsAnotherPurchaseAnotherCountIsNot() {
        Journal known = after(book(), read(book(), PURCHASES, "name;date;count;grade", "Inkwell;2026-09-14;6;15+"));

        assertThat(said(read(
                        known,
                        PURCHASES,
                        "name;date;count;grade",
                        "Inkwell;2026-09-14;4;17+",
                        "Inkwell;2026-09-14;5;15+")))
                .containsExactly(
                        "2 new 'Inkwell': Mon 14 Sep 2026; 4 bulbs; in hand; grade 17+",
                        "3 changed 'Inkwell': 5 bulbs, was 6 bulbs");
    }

    @Test
    void aGradeThatOnlyOneOfThemSaysPartsNoPurchases() {
        Journal graded = after(book(), read(book(), PURCHASES, "name;date;count;grade", "Inkwell;1 sep;6;15+"));
        Journal bare = after(book(), read(book(), PURCHASES, "name;date;count", "Inkwell;1 sep;6"));

        assertThat(said(read(graded, PURCHASES, "name;date;count", "Inkwell;1 sep;6")))
                .containsExactly("2 same 'Inkwell'");
        assertThat(said(read(bare, PURCHASES, "name;date;count;grade", "Inkwell;1 sep;6;15+")))
                .containsExactly("2 changed 'Inkwell': grade 15+");
    }

    @Test
    void ofTwoPurchasesOfADayTheOneOfThatCountIsMeant() {
        Journal two = after(
                book(), read(book(), PURCHASES, "name;date;count;grade", "Inkwell;1 sep;6;15+", "Inkwell;1 sep;4;17+"));

        assertThat(said(read(two, PURCHASES, "name;date;count", "Inkwell;1 sep;4")))
                .containsExactly("2 same 'Inkwell'");
    }

    @Test
    void anotherSupplierOrDayIsAnotherPurchase() {
        assertThat(read(
                                book(),
                                PURCHASES,
                                "name;date;count;from",
                                "Inkwell;2026-09-14;6;Harbour Seeds",
                                "Inkwell;2026-09-15;6;Harbour Seeds",
                                "Inkwell;2026-09-14;6;market",
                                "Inkwell;2026-09-14;6;MARKET")
                        .counts())
                .isEqualTo("3 new, 1 same");
    }

    @Test
    void howManyAreShortSaysHowManyWereOrdered() {
        assertThat(said(read(book(), PURCHASES, "name;date;count;short", "Inkwell;1 sep;27;3", "Inkwell;2 sep;27;0")))
                .containsExactly(
                        "2 new 'Inkwell': Tue 1 Sep 2026; 27 bulbs; in hand; 30 ordered",
                        "3 new 'Inkwell': Wed 2 Sep 2026; 27 bulbs; in hand");
    }

    @Test
    void anOrderThatHasComeIsChanged() {
        Journal known = after(book(), read(book(), PURCHASES, "name;date;count;state", "Inkwell;1 sep;10;ordered"));

        assertThat(said(read(known, PURCHASES, "name;date;count;state;cooled", "Inkwell;1 sep;10;arrived;0")))
                .containsExactly("2 changed 'Inkwell': in hand, was ordered; not cooled before");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "date   | soon;30         | 'soon' is no day. Write it as today, fri, +10, 14 nov or 2026-11-14.",
                "date   | ;30             | it is empty, and should hold the day the bulbs came, or were ordered: 2026-09-14,"
                        + " 14 sep 2026.",
                "count  | 1 sep;many      | 'many' is no number of bulbs. Write it as 30, in figures.",
                "count  | 1 sep;0         | '0' is no number of bulbs. Write it as 30, in figures.",
                "price  | 1 sep;30;$5     | $ stands for more than one currency. Write its code, as USD 9.50.",
                "cooled | 1 sep;30;;long  | 'long' is no number of weeks. Write it as 12, 11.5 or 2wk.",
                "waits  | 1 sep;30;;;celler  | 'celler' is no place of the book. Did you mean cellar?",
                "state  | 1 sep;30;;;;lost   | 'lost' is no state of a purchase. Write to order, ordered, in hand or rejected.",
                "soft   | 1 sep;30;;;;;few   | 'few' is no number of bulbs. Write it as 30, in figures.",
                "count  | 1 sep;30;;;;;2;29  | firm, soft and mould are 31 together, and 30 came. Count each bulb once, under"
                        + " the worst of it.",
                "short  | 1 sep;30;;;;;;;33;2 | 30 of 33 came, which is not 2 short. Mend one of the three numbers.",
            })
    void aBadCellIsNamedWithWhatWouldBeRight(String column, String cells, String sentence) {
        ListReading reading = read(
                book(),
                PURCHASES,
                "name;date;count;price;cooled;waits;state;soft;firm;ordered;short",
                "Inkwell;" + cells);

        assertThat(said(reading)).containsExactly("2 wrong 'Inkwell': " + column + ": " + sentence);
        assertThat(reading.change()).isEmpty();
    }

    @Test
    void whatWasSentInsteadNamesWhatWasOrdered() {
        Journal other = book().with(List.of(new Edit.Put(Variety.of(new Id<>(3, 1), "Twin", Kind.of("iris")))));
        Journal twins = other.with(List.of(new Edit.Put(Variety.of(new Id<>(3, 2), "Twin", Kind.of("crocus")))));

        assertThat(said(read(
                        twins,
                        PURCHASES,
                        "name;kind;date;count;instead of",
                        "Bramble Tax;hyacinth;1 sep;3;'inkwell'",
                        "Inkwell;;1 sep;3;Soot and Honey",
                        "Inkwell;;2 sep;3;Twin",
                        "Inkwell;;3 sep;3;''")))
                .containsExactly(
                        "2 new 'Bramble Tax': a new variety, hyacinth; Tue 1 Sep 2026; 3 bulbs; in hand; sent instead of"
                                + " 'Inkwell'",
                        "3 wrong 'Inkwell': instead of: 'Soot and Honey' is no variety of the book. Write it down first, or"
                                + " leave this empty.",
                        "4 wrong 'Inkwell': instead of: there is more than one 'Twin' in the book. Leave this empty.",
                        "5 wrong 'Inkwell': instead of: '''' is no name. Write the variety's, as Marrow Lane.");
    }
}
