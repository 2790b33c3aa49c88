// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.util.Optional;
import sillbook.model.LoggerFormat;

/**
 * The file of a thermometer that was looked at, and what came of it.
 *
 * @param file as it was typed
 * @param name without its folder
 * @param bytes how large it is
 * @param told what was said of it
 * @param counted empty while it leaves a question open
 * @param compared with what the journal has; empty while it leaves a question open
 */
public record Looked(
        String file,
        String name,
        long bytes,
        LoggerFormat told,
        Understood understood,
        Optional<Counted> counted,
        Optional<Compared> compared) {

    /** One that leaves a question open. */
    public static Looked open(String file, String name, long bytes, LoggerFormat told, Understood understood) {
        return new Looked(file, name, bytes, told, understood, Optional.empty(), Optional.empty());
    }

    /** The same, and what its lines come to. */
    public Looked with(Counted lines, Compared beside) {
        return new Looked(file, name, bytes, told, understood, Optional.of(lines), Optional.of(beside));
    }
}
