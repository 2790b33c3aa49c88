// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Five tulips are recorded; the dates of the sixth are the grower's own, say so, and can be asked for as the handbook has them. */
@ExtendWith(NeedsTmux.class)
class OwnTulipsIT {
    private static final int WAS_POTTED = 330;
    private static final int CAME_IN = 190;
    private static final int TO_FLOWER = 31;
    private static final int IN_FLOWER = 9;

    private static final int SINCE_SIXTH_CAME_IN = 5;

    @TempDir
    private Path home;

    private Program program() {
        return new Program(home);
    }

    /** Writes a line and gives the label it speaks of first. */
    private String label(String line) throws IOException, InterruptedException {
        return program()
                .run("write", line)
                .lines()
                .filter(said -> said.contains(" potted"))
                .findFirst()
                .orElseThrow()
                .split(" ", 2)[0];
    }

    private void recordOneThatFlowered(int later) throws IOException, InterruptedException {
        String label = label("Marrow Lane x5, cellar, -" + (WAS_POTTED - later));
        int in = CAME_IN - 3 * later;
        program()
                .write(
                        label + " kitchen sill, -" + in,
                        label + " first flower, -" + (in - TO_FLOWER - later % 2),
                        label + " past bloom, -" + (in - TO_FLOWER - IN_FLOWER - later % 2));
    }

    /** Three weeks after it came in, as published: {@code 12 Dec}. */
    private static String handbooksDay() {
        return LocalDate.now(ZoneId.systemDefault())
                .plusDays(21 - SINCE_SIXTH_CAME_IN)
                .format(DateTimeFormatter.ofPattern("d MMM", Locale.ROOT));
    }

    private String bloom(String label) throws IOException, InterruptedException {
        return program()
                .run("pot", label)
                .lines()
                .filter(line -> line.contains("in bloom"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSixthTulipIsForetoldByFiveOfOnesOwn() throws IOException, InterruptedException {
        program().write("place cellar, cellar", "place kitchen sill, warm sill", "variety Marrow Lane, tulip triumph");
        for (int i = 0; i < 5; i++) {
            recordOneThatFlowered(i);
        }
        String sixth = label("Marrow Lane x5, cellar, -125");
        program().write(sixth + " kitchen sill, -" + SINCE_SIXTH_CAME_IN);
        String own = bloom(sixth);
        assertThat(own).contains("your 5 pots").doesNotContain(handbooksDay());

        try (Tmux terminal = program().open()) {
            terminal.waitFor("1 TODAY").press("2").waitFor("2 POTS");
            terminal.press("Enter").waitFor("your 5 pots");
            terminal.press("w").waitFor("Why ");
            for (int at = 2; !terminal.screen().contains("Why weeks to bloom"); at++) {
                terminal.press("Right").waitFor(" " + at + " of ");
            }
            terminal.waitFor("Why weeks to bloom, by your 5 pots").waitFor("H handbook's");

            terminal.press("h")
                    .waitFor("Why weeks to bloom, not those of your 5 pots")
                    .waitFor("U takes it back");
            assertThat(bloom(sixth)).contains("handbook").contains(handbooksDay());
            terminal.press("h").waitFor("Why weeks to bloom, by your 5 pots");
            assertThat(bloom(sixth)).isEqualTo(own);

            terminal.press("Escape").waitFor("your 5 pots");
            Program.leave(terminal);
        }
        assertThat(program().run("undo")).contains("handbook's figure");
        assertThat(bloom(sixth)).contains(handbooksDay());
    }
}
