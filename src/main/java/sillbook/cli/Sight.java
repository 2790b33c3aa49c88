// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.function.Supplier;
import sillbook.words.Warned;

/**
 * What a command has to show.
 *
 * @param document as JSON, with all provisos in it
 * @param lines as plain lines
 * @param warnings said beside the plain lines
 * @param whenEmpty what is said where there is no line
 */
record Sight(Supplier<String> document, Supplier<List<String>> lines, List<Warned> warnings, String whenEmpty) {

    void show(JsonOption json, Printer printer) {
        if (json.isGiven()) {
            printer.json(document.get());
            return;
        }
        List<String> all = lines.get();
        printer.lines(all);
        if (all.isEmpty()) {
            printer.say(whenEmpty);
        }
        warnings.forEach(printer::warn);
    }
}
