// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.words.Complaint;
import sillbook.words.Heard;
import sillbook.words.list.Table;

/** Files as spreadsheets, editors and hands write them. Quoting is checked against RFC 4180, section 2. */
class CsvFileTest {
    private static Heard<Table> heard(byte[] bytes) throws IOException {
        return CsvFile.read(new ByteArrayInputStream(bytes));
    }

    private static Table table(String text) throws IOException {
        return heard(text.getBytes(UTF_8)).value().orElseThrow();
    }

    private static String complaint(byte[] bytes) throws IOException {
        return heard(bytes).complaint().map(Complaint::sentence).orElseThrow();
    }

    private static Table one(List<String> header, int number, List<String> cells) {
        return new Table(header, List.of(new Table.Row(number, cells)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name,height\nInkwell,45.5\n",
                "name,height\r\nInkwell,45.5",
                "\uFEFFname;height\nInkwell;45.5\n",
                "name\theight\nInkwell\t45.5\n",
                "\"name\",\"height\"\n\"Inkwell\",\"45.5\"\n",
                " name , height \n Inkwell , 45.5 \n"
            })
    void theyAllSayTheSame(String text) throws IOException {
        assertThat(table(text)).isEqualTo(one(List.of("name", "height"), 2, List.of("Inkwell", "45.5")));
    }

    @Test
    void aQuotedCellMayHoldMarksQuotesAndLines() throws IOException {
        assertThat(table("name;note\nInkwell;\"a; \"\"b\"\"\r\nand c\"\n"))
                .isEqualTo(one(List.of("name", "note"), 2, List.of("Inkwell", "a; \"b\"\r\nand c")));
    }

    @Test
    void aDecimalCommaIsNoEndOfACellWhereSemicolonsAre() throws IOException {
        assertThat(table("name;height\nInkwell;45,5\n").rows().get(0).cells()).containsExactly("Inkwell", "45,5");
    }

    @Test
    void rowsAreCountedAsASpreadsheetCountsThem() throws IOException {
        Table table = table("\n\nname,kind\n\nInkwell,iris\n,,\n\"two\nlines\",iris\n\n");

        assertThat(table.rows()).extracting(Table.Row::number).containsExactly(5, 7);
    }

    @Test
    void anEmptyFileHasNoColumns() throws IOException {
        for (String nothing : List.of("", "\n\n", "\uFEFF", ";;;\n")) {
            assertThat(complaint(nothing.getBytes(UTF_8)))
                    .isEqualTo("It is empty. Write the names of the columns in its first row.");
        }
    }

    @Test
    void whatIsNotUtf8IsSaidToBe() throws IOException {
        String sentence = "It is no text in UTF-8. Save it from the spreadsheet as CSV in UTF-8.";

        assertThat(complaint("name\nÉcru\n".getBytes(ISO_8859_1))).isEqualTo(sentence);
        assertThat(complaint("name\nEcru\n".getBytes(UTF_16))).isEqualTo(sentence);
        assertThat(complaint("na\0me\n".getBytes(UTF_8))).isEqualTo(sentence);
    }

    @Test
    void tornQuotesAreFoundWhereTheyBegin() throws IOException {
        assertThat(complaint("name,note\nInkwell,fine\nMarrow Lane,\"torn\n".getBytes(UTF_8)))
                .isEqualTo(
                        "Its quotes do not match, in row 3 or after it. A quoted cell begins and ends with \", and one"
                                + " inside is written twice.");
        assertThat(complaint("name,note\nInkwell,\"a\"b\n".getBytes(UTF_8)))
                .startsWith("Its quotes do not match, in row 2");
    }

    @Test
    void aHugeFileIsNotReadToItsEnd() throws IOException {
        assertThat(complaint("name\n".repeat(1 << 20).getBytes(UTF_8)))
                .isEqualTo("It is larger than 4 MB, which no list of bulbs is. Name another.");
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void noBytesAreTooBroken(long seed) throws IOException {
        Random random = new Random(seed);
        byte[] marks = ",;\t\"'\r\n \\#=name".getBytes(UTF_8);
        for (int i = 0; i < 2000; i++) {
            byte[] bytes = new byte[random.nextInt(80)];
            for (int at = 0; at < bytes.length; at++) {
                bytes[at] = random.nextInt(40) == 0 ? (byte) random.nextInt(256) : marks[random.nextInt(marks.length)];
            }
            Heard<Table> heard = heard(bytes);
            assertThat(heard.value().isPresent()).isNotEqualTo(heard.complaint().isPresent());
            heard.complaint()
                    .ifPresent(
                            why -> assertThat(why.sentence()).matches("It.*\\.").doesNotContain("Exception"));
        }
    }
}
