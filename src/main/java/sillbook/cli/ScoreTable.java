// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.reckon.effects.Observation;
import sillbook.text.Near;
import sillbook.words.Counts;
import sillbook.words.list.Table;

/**
 * The scores in a table, with what each was made under.
 *
 * @param leftOut numbers of the rows in which the score or a factor is empty
 */
record ScoreTable(List<Observation> observations, List<Integer> leftOut) {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,9}([.,]\\d{1,15})?");

    ScoreTable {
        observations = List.copyOf(observations);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Finds the columns by their names, whatever their case, and reads every row.
     *
     * @throws CouldNot when a column is not there, or what stands in the score's is no number
     */
    static ScoreTable read(Table table, String score, List<String> factors) {
        List<Integer> columns = Stream.concat(Stream.of(score), factors.stream())
                .map(name -> column(table.header(), name))
                .toList();
        List<Observation> observations = new ArrayList<>();
        List<Integer> leftOut = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            List<String> cells = columns.stream().map(row::cell).toList();
            if (cells.stream().anyMatch(String::isBlank)) {
                leftOut.add(row.number());
            } else {
                observations.add(Observation.of(number(cells.get(0), row), cells.subList(1, cells.size())));
            }
        }
        return new ScoreTable(observations, leftOut);
    }

    private static int column(List<String> header, String name) {
        List<Integer> found = IntStream.range(0, header.size())
                .filter(column -> isSame(header.get(column), name))
                .boxed()
                .toList();
        if (found.size() > 1) {
            throw new CouldNot("Two columns are named '" + name + "'. Rename one.");
        }
        if (found.isEmpty()) {
            String meant = Near.closest(name, header)
                    .map(near -> " Did you mean " + near + "?")
                    .orElse(" There are " + Counts.and(header) + ".");
            throw new CouldNot("There is no column '" + name + "'." + meant);
        }
        return found.get(0);
    }

    private static boolean isSame(String column, String name) {
        return column.strip().toLowerCase(Locale.ROOT).equals(name.strip().toLowerCase(Locale.ROOT));
    }

    private static double number(String cell, Table.Row row) {
        if (!NUMBER.matcher(cell.strip()).matches()) {
            throw new CouldNot("Row " + row.number() + ": '" + cell + "' is no score. Write a number, as 4 or 3.5.");
        }
        return Double.parseDouble(cell.strip().replace(',', '.'));
    }
}
