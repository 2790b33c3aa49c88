// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import sillbook.exchange.logger.Source;

/**
 * A thermometer's file that was given by its name, or by a dash on the standard input.
 *
 * @param file its name as it was given
 */
record LoggerIn(String file, InputStream in) {
    private static final String STANDARD_INPUT = "-";

    /** What it is called where something is wrong with it. */
    String name() {
        return isStandardInput() ? "The standard input" : file;
    }

    /** What it is called in the journal. */
    String shortName() {
        return isStandardInput()
                ? "the standard input"
                : String.valueOf(Path.of(file).getFileName());
    }

    private boolean isStandardInput() {
        return file.equals(STANDARD_INPUT);
    }

    /**
     * Where its bytes come from; the standard input is read to its end first.
     *
     * @throws Misused when that can be no file's name
     * @throws CouldNot when the standard input cannot be read
     */
    Source source() {
        try {
            return isStandardInput() ? Source.of(in.readAllBytes()) : Source.of(Path.of(file));
        } catch (InvalidPathException wrong) {
            throw new Misused("'" + file + "' cannot be the name of a file. Name another.");
        } catch (IOException failure) {
            throw new CouldNot(name() + ": It could not be read: " + failure.getMessage() + ".");
        }
    }
}
