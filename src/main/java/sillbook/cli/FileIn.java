// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.Function;
import sillbook.exchange.CsvFile;
import sillbook.exchange.logger.Source;
import sillbook.words.Heard;
import sillbook.words.list.Table;

/**
 * A file that was given by its name, or by a dash on the standard input.
 *
 * @param file its name as it was given
 */
record FileIn(String file, InputStream in) {
    private static final String STANDARD_INPUT = "-";

    /** What it is called where something is wrong with it. */
    String name() {
        return isStandardInput() ? "The standard input" : file;
    }

    /** What it is called in the journal. */
    String shortName() {
        return isStandardInput() ? "the standard input" : String.valueOf(path().getFileName());
    }

    private boolean isStandardInput() {
        return file.equals(STANDARD_INPUT);
    }

    /**
     * Reads it either way, or says what is wrong with it.
     *
     * @throws Misused when that can be no file's name
     */
    <T> Heard<T> heard(Function<Path, Heard<T>> named, Function<InputStream, Heard<T>> streamed) {
        return isStandardInput() ? streamed.apply(in) : named.apply(path());
    }

    /** The table in it, or what is wrong with it. */
    Heard<Table> table() {
        return heard(CsvFile::read, CsvFile::read);
    }

    /**
     * The table in it.
     *
     * @throws CouldNot when there is none
     */
    Table readTable() {
        return told(table());
    }

    /**
     * Where the bytes of a thermometer's file come from; the standard input is read to its end first.
     *
     * @throws CouldNot when the standard input cannot be read
     */
    Source source() {
        return told(heard(path -> Heard.as(Source.of(path)), FileIn::whole));
    }

    private static Heard<Source> whole(InputStream in) {
        try {
            return Heard.as(Source.of(in.readAllBytes()));
        } catch (IOException failure) {
            return Heard.not("not readable", "It could not be read: " + failure.getMessage() + ".");
        }
    }

    /**
     * What was heard of it.
     *
     * @throws CouldNot when something is wrong with it
     */
    <T> T told(Heard<T> heard) {
        return heard.fold(found -> found, why -> {
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
