// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.stream.Stream;

/** Every command the program is meant to have; {@code reckon} is the one with commands below it. */
final class Names {
    private Names() {}

    static Stream<String> ofCommands() {
        return Stream.of(
                "demo",
                "today",
                "pots",
                "pot",
                "places",
                "readings",
                "ground",
                "bulbs",
                "seasons",
                "standings",
                "choose",
                "plan",
                "supplies",
                "diary",
                "round",
                "labels",
                "potting",
                "calendar",
                "write",
                "import",
                "undo",
                "redo",
                "verify",
                "backup",
                "reckon",
                "reckon dates",
                "reckon cold",
                "reckon heat",
                "reckon soil",
                "reckon fit",
                "reckon shelf",
                "reckon cover",
                "reckon effects",
                "reckon stages");
    }
}
