// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.List;

/** Quick lines from a stream, in UTF-8 whatever the locale. Empty ones, and those that begin with #, say nothing. */
final class LinesIn {
    private static final String REMARK = "#";

    private LinesIn() {}

    /**
     * Reads to the end.
     *
     * @throws CouldNot when there is no line, or it cannot be read
     */
    static List<String> read(InputStream in) {
        List<String> lines = text(in).lines()
                .filter(line -> !line.isBlank() && !line.startsWith(REMARK))
                .toList();
        if (lines.isEmpty()) {
            throw new CouldNot("There is no line on the standard input. Write one, as: T1-T6 cool room");
        }
        return lines;
    }

    private static String text(InputStream in) {
        try {
            return UTF_8.newDecoder().decode(ByteBuffer.wrap(in.readAllBytes())).toString();
        } catch (CharacterCodingException otherwise) {
            throw new CouldNot("The standard input is not in UTF-8. Nothing was kept. Write it in UTF-8.");
        } catch (IOException broken) {
            throw new CouldNot("The standard input could not be read: " + broken.getMessage() + ". Nothing was kept.");
        }
    }
}
