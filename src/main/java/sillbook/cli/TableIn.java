// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import sillbook.exchange.CsvFile;
import sillbook.words.Heard;
import sillbook.words.list.Table;

/** A table that was given by the name of its file, or by a dash on the standard input. */
final class TableIn {
    private static final String STANDARD_INPUT = "-";

    private TableIn() {}

    /**
     * Reads it.
     *
     * @throws Misused when that can be no file's name
     * @throws CouldNot when there is no table in it
     */
    static Table read(String file, InputStream in) {
        Heard<Table> table = file.equals(STANDARD_INPUT) ? CsvFile.read(in) : CsvFile.read(path(file));
        return table.fold(found -> found, why -> {
            throw new CouldNot((file.equals(STANDARD_INPUT) ? "The standard input" : file) + ": " + why.sentence());
        });
    }

    private static Path path(String file) {
        try {
            return Path.of(file);
        } catch (InvalidPathException wrong) {
            throw new Misused("'" + file + "' cannot be the name of a file. Name another.");
        }
    }
}
