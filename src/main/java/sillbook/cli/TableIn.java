// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import sillbook.exchange.CsvFile;
import sillbook.words.Heard;
import sillbook.words.list.Table;

/**
 * A table that was given by the name of its file, or by a dash on the standard input.
 *
 * @param file its name as it was given
 */
record TableIn(String file, InputStream in) {
    private static final String STANDARD_INPUT = "-";

    /** What it is called where something is wrong with it. */
    String name() {
        return isStandardInput() ? "The standard input" : file;
    }

    private boolean isStandardInput() {
        return file.equals(STANDARD_INPUT);
    }

    /**
     * Reads it, or says what is wrong with it.
     *
     * @throws Misused when that can be no file's name
     */
    Heard<Table> heard() {
        return isStandardInput() ? CsvFile.read(in) : CsvFile.read(path());
    }

    /**
     * Reads it.
     *
     * @throws Misused when that can be no file's name
     * @throws CouldNot when there is no table in it
     */
    Table read() {
        return heard().fold(found -> found, why -> {
            throw new CouldNot(name() + ": " + why.sentence());
        });
    }

    private Path path() {
        try {
            return Path.of(file);
        } catch (InvalidPathException wrong) {
            throw new Misused("'" + file + "' cannot be the name of a file. Name another.");
        }
    }
}
