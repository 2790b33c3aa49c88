// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import sillbook.words.Heard;
import sillbook.words.list.Table;

/**
 * Tables in files of separated values (RFC 4180), as spreadsheets write them: in UTF-8 with or without a mark at its
 * beginning, parted by commas, semicolons or tabs, whichever the first row has most of.
 */
public final class CsvFile {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final String NO_TEXT = "It is no text in UTF-8. Save it from the spreadsheet as CSV in UTF-8.";
    private static final ObjectReader READER = CsvMapper.builder()
            .enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .enable(CsvParser.Feature.TRIM_SPACES)
            .build()
            .readerFor(String[].class);

    private CsvFile() {}

    /** The table in a file, or what is wrong with it. */
    public static Heard<Table> read(Path file) {
        return WholeFile.read(file, CsvFile::read);
    }

    /** The same of a stream, which is read to its end. */
    public static Heard<Table> read(InputStream in) {
        return WholeFile.bytes(in, "no list of bulbs").then(CsvFile::text).then(CsvFile::table);
    }

    private static Heard<String> text(byte[] bytes) {
        try {
            String text = UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.indexOf('\0') < 0
                    ? Heard.as(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text)
                    : Heard.not("no text", NO_TEXT);
        } catch (CharacterCodingException otherwise) {
            return Heard.not("no text", NO_TEXT);
        }
    }

    private static Heard<Table> table(String text) {
        List<Table.Row> rows = new ArrayList<>();
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(text));
        int number = 1;
        try (MappingIterator<String[]> records = READER.with(schema).readValues(text)) {
            while (records.hasNextValue()) {
                Table.Row row = new Table.Row(number, List.of(records.nextValue()));
                if (!row.cells().stream().allMatch(String::isBlank)) {
                    rows.add(row);
                }
                number++;
            }
        } catch (JsonProcessingException torn) {
            return torn(number);
        } catch (IOException impossible) {
            throw new UncheckedIOException("memory could not be read", impossible);
        }
        return rows.isEmpty()
                ? Heard.not("empty", "It is empty. Write the names of the columns in its first row.")
                : Heard.as(new Table(rows.get(0).cells(), rows.subList(1, rows.size())));
    }

    private static Heard<Table> torn(int row) {
        return Heard.not(
                "torn",
                "Its quotes do not match, in row " + row
                        + " or after it. A quoted cell begins and ends with \", and one inside is written twice.");
    }

    /** Of the three, the one the first row has most of. */
    private static char separator(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        mark -> first.chars().filter(c -> c == mark).count()))
                .orElseThrow();
    }
}
