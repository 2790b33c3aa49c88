// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The statements that lie in files beside the program. */
final class Sql {
    private static final String FOLDER = "/sillbook/store/";

    private Sql() {}

    /** The text of a file, named below {@code sillbook/store}. */
    static String file(String name) {
        try (InputStream in = Sql.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + FOLDER + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
