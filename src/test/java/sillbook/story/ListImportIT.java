// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A spreadsheet of varieties: one cell is wrong, the file is mended beside the open program, and all of it comes in as one step. */
@ExtendWith(NeedsTmux.class)
class ListImportIT {
    /** Beside the file's name. */
    private static final int MOST_KEYS = 10;

    private static final String NAME = "~/list.csv";
    private static final String LIST =
            "name;kind;height;row\r\n'Marrow Lane';tulip triumph;%s;A\r\nInkwell;hyacinth;25;B\r\n";

    @TempDir
    private Path home;

    private void save(String height) throws IOException {
        Files.writeString(home.resolve("list.csv"), LIST.replace("%s", height));
    }

    @Test
    void aListIsLookedThroughMendedAndImportedAsOneStep() throws IOException {
        save("tall");
        try (Tmux terminal = new Program(home).open()) {
            terminal.waitFor("It has no pages yet").press("Enter").waitFor("Your own book");
            terminal.press("Escape").waitForNo("Your own book");
            CountedKeys hands = new CountedKeys(terminal);

            hands.press("4").waitFor("No variety yet.").press("i").waitFor("Import a list");
            hands.type(NAME).press("Enter");
            hands.waitFor("1 new, 1 wrong").waitFor("'tall' is no length").waitFor("left out: row");

            save("45,5");
            hands.press("Escape").waitFor("Import a list").press("Enter").waitFor("2 new");
            hands.press("Enter").waitFor("list of varieties imported, 2 new. U takes it back.");
            hands.waitFor("'Marrow Lane'").waitFor("'Inkwell'");

            assertThat(hands.told("a list imported, one cell mended")).isLessThanOrEqualTo(MOST_KEYS + NAME.length());
            terminal.press("u")
                    .waitFor("list of varieties imported, 2 new")
                    .press("Enter")
                    .waitFor("No variety yet.");
            Program.leave(terminal);
        }
    }
}
