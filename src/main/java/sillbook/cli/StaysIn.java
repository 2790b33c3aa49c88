// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import sillbook.exchange.StaysFile;
import sillbook.reckon.shelf.Stays;
import sillbook.words.Heard;

/**
 * Stays that were given by the name of their file, or by a dash on the standard input.
 *
 * @param file its name as it was given
 */
record StaysIn(String file, InputStream in) {
    private static final String STANDARD_INPUT = "-";

    /**
     * Reads them.
     *
     * @throws CouldNot when there are none in it
     */
    Stays read() {
        boolean isStandardInput = file.equals(STANDARD_INPUT);
        Heard<Stays> heard = isStandardInput ? StaysFile.read(in) : fromFile();
        return heard.fold(stays -> stays, why -> {
            throw new CouldNot((isStandardInput ? "The standard input" : file) + ": " + why.sentence());
        });
    }

    private Heard<Stays> fromFile() {
        try (InputStream opened = Files.newInputStream(Path.of(file))) {
            return StaysFile.read(opened);
        } catch (InvalidPathException wrong) {
            throw new Misused("'" + file + "' cannot be the name of a file. Name another.");
        } catch (IOException gone) {
            return Heard.not("not there", "it could not be opened. Name a file that is there.");
        }
    }
}
