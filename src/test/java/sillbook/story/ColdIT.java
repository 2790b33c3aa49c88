// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * What the thermometers of the demo saw is walked to and read: why a pot is held back, which pot stood in the frost, where a battery was flat, what
 * is known of a fridge by its weeks alone, and when a trench is to be dug.
 */
@ExtendWith(NeedsTmux.class)
class ColdIT {
    private static Tmux demo() {
        return Tmux.terminal().run(Program.FILE, "demo").waitFor("1 TODAY");
    }

    @Test
    void aPotIsHeldBackAndTheReasonIsRead() {
        try (Tmux terminal = demo()) {
            terminal.waitFor("porch froze to -2.4 C on 9 Jan").press("2");
            terminal.waitFor("2 POTS").press(downTo(15)).waitFor("D2  Held back: the cellar ran warm");
            terminal.press("Enter")
                    .waitFor("12 and a half weeks in, about 11 and a half cold enough; needs")
                    .waitFor("By thermometer: 10.8 weeks read, 1.8 not accounted for")
                    .waitFor("half a week a cell");
            terminal.press("w").waitFor("Why 12 and a half weeks in").waitFor("cellar: 75.5 days read");
            Program.leave(terminal.press("Escape").waitFor("So far"));
        }
    }

    @Test
    void aPotStoodInTheFrost() {
        try (Tmux terminal = demo()) {
            terminal.press("2")
                    .waitFor("2 POTS")
                    .press(downTo(5))
                    .waitFor("M1  The porch froze to -2.4 C on Sat 9 Jan: keep it cold, do not warm it.")
                    .waitFor("for softness on Sat 23 Jan (?)");
            Program.leave(terminal);
        }
    }

    @Test
    void thePlacesTellOfAWarmCellarAFlatBatteryAndTheWeeksOfAFridge() {
        try (Tmux terminal = demo()) {
            terminal.press("3")
                    .waitFor("3 PLACES")
                    .waitFor("since 20 Sep")
                    .waitFor("98 %")
                    .press("Down");
            terminal.waitFor("gap 25 Nov-5 Dec").waitFor("40 d over 9").press("w");
            terminal.waitFor("Why over its band since Sun 10 Jan")
                    .waitFor("mean 9.2 C")
                    .press("Escape");
            terminal.waitFor("gap 25 Nov-5 Dec")
                    .press("z")
                    .waitFor("cellar, month")
                    .press("z")
                    .waitFor("cellar, week")
                    .press("Escape");
            Program.leave(terminal.waitFor("cellar, season"));
        }
    }

    @Test
    void theTrenchSaysWhenToDigAndWhetherItFreezes() {
        try (Tmux terminal = demo()) {
            terminal.press("3")
                    .waitFor("3 PLACES")
                    .press("End")
                    .waitFor("trench, season")
                    .press("Enter");
            terminal.waitFor("Dig before 6 Dec, when bare ground freezes")
                    .waitFor("Pots in about 30 Oct")
                    .waitFor("Coldest there about 12 Feb");
            Program.leave(terminal);
        }
    }

    private static String[] downTo(int row) {
        return Stream.generate(() -> "Down").limit(row).toArray(String[]::new);
    }
}
