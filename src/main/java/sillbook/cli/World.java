// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Map;
import java.util.function.Supplier;
import sillbook.app.Bookshelf;
import sillbook.app.Folders;

/**
 * What surrounds a command.
 *
 * @param environment variables by name
 * @param shelf asked only by a command that opens a journal
 * @param today for a command that opens no journal
 */
public record World(
        Map<String, String> environment,
        Folders folders,
        Supplier<Bookshelf> shelf,
        Supplier<LocalDate> today,
        InputStream in,
        OutputStream out,
        OutputStream err) {
    public World {
        environment = Map.copyOf(environment);
    }
}
