// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sillbook.model.Season;

/** A season planned from an empty journal: by hand, then the best there is; adopted, a purchase short, planned anew. */
@ExtendWith(NeedsTmux.class)
class PlanIT {
    /** Of the season bulbs are chosen for today, whenever that is. */
    private final int spring = Season.chosenFor(LocalDate.now(ZoneId.systemDefault()), MonthDay.of(7, 1))
                    .year()
            + 1;

    @TempDir
    private Path home;

    private Program program() {
        return new Program(home);
    }

    /** Six sorts of bulbs, all invented, three places and two wishes. */
    private void writeWhatThereIs() throws IOException, InterruptedException {
        program()
                .write(
                        "place garage fridge, fridge, room for 6",
                        "place cellar, room for 20",
                        "place kitchen sill, warm sill, room for 4",
                        "to order 20 Marrow Lane (tulip)",
                        "to order 10 Lantern Row (daffodil)",
                        "to order 9 Inkwell (hyacinth)",
                        "to order 24 Penny Gloaming (crocus)",
                        "to order 24 Night Marbles (grape hyacinth)",
                        "to order 12 Ninepenny Hat (tulip double early)",
                        "wish something every day 12 mar to 2 apr " + spring,
                        "wish 2 pots hyacinth 14 mar " + spring);
    }

    @Test
    void aSeasonIsPlannedAdoptedAndPlannedAnew() throws IOException, InterruptedException {
        writeWhatThereIs();
        try (Tmux terminal = program().open()) {
            terminal.waitFor("1 TODAY");
            byHandAndBest(terminal);
            adopt(terminal);
            comesShort(terminal);
            planAnew(terminal);
            takeBackAndPutBack(terminal);
            Program.leave(terminal);
        }
        assertThat(program().run("diary")).isNotEmpty();
    }

    private static void byHandAndBest(Tmux terminal) {
        terminal.press("5")
                .waitFor("PLAN")
                .waitFor("Bring in 2____ pots every 12___ days")
                .waitFor("by hand, ");
        terminal.press("Tab", "C-u")
                .type("1")
                .waitFor("Bring in 1____ pots")
                .press("Enter")
                .waitFor("+ - a day");
        terminal.press("v").waitFor("12 Mar-2 Apr").waitFor("14 Mar, 2");
        terminal.press("b").waitFor("The best ").waitFor("as found, not kept");
        terminal.press("k").waitFor("written down. U takes it back.").waitFor("plan A of 1");
    }

    private static void adopt(Tmux terminal) {
        terminal.press("t").waitFor("Adopt plan A").waitFor("wait to be potted");
        terminal.press("Enter").waitFor("plan A adopted").waitFor("plan A of 1, adopted");
        terminal.press("2").waitFor("POTS").press(">");
        terminal.waitFor("'Inkwell'");
        terminal.press("Enter")
                .waitFor("into the cold")
                .waitFor("Not potted yet")
                .press("Escape");
        terminal.waitFor("'Inkwell'").press("<");
    }

    /** Of the hyacinths the plan wants all nine come four. */
    private static void comesShort(Tmux terminal) {
        terminal.press("4")
                .waitFor("BULBS")
                .press("v")
                .waitFor("View")
                .press("p")
                .waitFor("purchases, 1-6 of 6");
        terminal.press("Down", "Down", "Enter").waitFor("'Inkwell'");
        terminal.type("4 of 9").waitFor("5 short").press("Enter").waitFor("U takes it back");
        terminal.press("5").waitFor("are planned, and 4 are to be had").waitFor("Cure: plan anew");
    }

    private static void planAnew(Tmux terminal) {
        terminal.press("b").waitFor("The best ").waitFor("as found, not kept");
        terminal.press("k").waitFor("plan B of 2");
        terminal.press("t").waitFor("Adopt plan B").waitFor("Plan A, adopted on");
        terminal.press("Enter").waitFor("plan B of 2, adopted");
    }

    private static void takeBackAndPutBack(Tmux terminal) {
        terminal.press("u").waitFor("plan B adopted").press("Enter").waitFor("Taken back: plan B adopted");
        terminal.waitFor("plan B of 2, ");
        terminal.press("p").waitFor("A, adopted").press("Escape");
        terminal.press("r").waitFor("plan B adopted").press("Enter").waitFor("Put back: plan B adopted");
        terminal.waitFor("plan B of 2, adopted");
    }
}
