// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** August: two parcels come, one of them short and not all sound, the other with another variety in it. */
@ExtendWith(NeedsTmux.class)
class ShortPurchaseIT {
    private static final String PROGRAM = System.getProperty("sillbook.program", "target/sillbook/bin/sillbook");

    /** Most of them letters: what is typed is two counts and a name. */
    private static final int MOST_KEYS = 60;

    @TempDir
    private Path home;

    @BeforeEach
    void order() throws IOException, InterruptedException {
        command("write", "ordered 10 Inkwell (hyacinth), 1 jul, from Harbour Seeds");
        command("write", "ordered 30 Marrow Lane (tulip triumph), 2 jul, grade 12+, from Harbour Seeds");
    }

    private String journal() {
        return home.resolve("august.sillbook").toString();
    }

    private Tmux open() {
        return Tmux.terminal()
                .environment("SILLBOOK_JOURNAL", journal())
                .environment("XDG_CACHE_HOME", home.resolve("cache").toString())
                .environment("XDG_STATE_HOME", home.resolve("state").toString())
                .run(PROGRAM);
    }

    private String command(String name, String... rest) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(PROGRAM, name);
        builder.command().addAll(List.of(rest));
        builder.environment().put("SILLBOOK_JOURNAL", journal());
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        Process process = builder.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }

    @Test
    void whatCameIsCountedAndOnlySoundBulbsAreInHand() throws IOException, InterruptedException {
        try (Tmux terminal = open()) {
            terminal.waitFor("1 TODAY");
            CountedKeys hands = new CountedKeys(terminal);

            hands.press("4")
                    .waitFor("BULBS")
                    .press("v")
                    .waitFor("View")
                    .press("p")
                    .waitFor("purchases, 1-2 of 2");
            hands.press("Enter").waitFor("30 'Marrow Lane' ordered");
            hands.type("27 of 30").press("Tab").type("2 soft, 1 mould");
            hands.waitFor("3 short: 30 were ordered").waitFor("24 bulbs in hand");
            hands.press("Enter").waitFor("U takes it back");

            hands.press("End", "Enter").waitFor("10 'Inkwell' ordered");
            hands.press("Tab", "Tab", "Tab").type("Bramble Tax (hyacinth)").waitFor("sent instead of 'Inkwell'");
            hands.press("Enter").waitFor("U takes it back");

            assertThat(hands.told("an August purchase arriving short, another substituted"))
                    .isLessThanOrEqualTo(MOST_KEYS);
            terminal.press("q").waitFor("Enter leaves").press("Enter");
            assertThat(terminal.exitCode()).isZero();
        }
        assertThat(command("bulbs"))
                .contains("27 of 30 bulbs, in hand")
                .contains("2 soft, 1 with mould: 24 to plant")
                .contains("10 bulbs, in hand; sent instead of 'Inkwell'");
        assertThat(command("write", "--dry-run", "5 x Marrow Lane x5, 15 cm"))
                .contains("25 bulbs wanted, 24 in hand: 1 is not in the book.");
    }
}
