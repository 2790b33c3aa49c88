// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The demo's winters are over: what to grow in the next is chosen, handed on to be ordered, and taken back. */
@ExtendWith(NeedsTmux.class)
class ChoosingIT {
    private static final Pattern TO_ORDER = Pattern.compile("'Night Marbles' +23 +\\? +to order");

    @Test
    void twoAreChosenOneIsSetAsideAndTheChosenAreHandedOn() {
        try (Tmux terminal = Tmux.terminal().run(Program.FILE, "demo").waitFor("1 TODAY")) {
            terminal.press("6").waitFor("What did well").press("v").waitFor("C choosing");
            terminal.press("c").waitFor("2 chosen, 34 bulbs");

            found(terminal, "inkwell")
                    .press("c")
                    .waitFor("'Inkwell' chosen for 2027-28")
                    .waitFor("3 chosen");
            found(terminal, "linen parade").press("c").waitFor("4 chosen");
            found(terminal, "night marbles").press("-").waitFor("'Night Marbles' chosen for 2027-28, 23 bulbs");
            found(terminal, "umbrella street").press("x").waitFor("Set 'Umbrella Street' aside");
            terminal.type("too slow").press("Enter").waitFor("set aside for 2027-28: too slow");

            terminal.press("Escape").waitFor("H hands them on").press("h");
            terminal.waitFor("bulbs of 4 varieties, one purchase for each").press("Enter");
            terminal.waitFor("of 4 chosen varieties to order for 2027-28").waitFor("All that is chosen is to order");
            terminal.press("4")
                    .waitFor("4 BULBS")
                    .press("v")
                    .waitFor("P purchases")
                    .press("p");
            terminal.waitUntil(
                    "a purchase to order", shown -> TO_ORDER.matcher(shown).find());

            terminal.press("u").waitFor("Take back").press("Enter");
            terminal.waitUntil(
                    "none to order", shown -> !TO_ORDER.matcher(shown).find());
            terminal.press("6", "v").waitFor("C choosing").press("c").waitFor("H hands them on");
            Program.leave(terminal);
        }
    }

    private static Tmux found(Tmux terminal, String variety) {
        terminal.press("f").waitFor("Find").press("C-u").type(variety).waitFor("1 of ");
        return terminal.press("Enter").waitFor("Enter variety");
    }
}
