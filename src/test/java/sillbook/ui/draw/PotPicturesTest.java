// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.chart.PotDrawing;
import sillbook.chart.PotDrawing.Middle;
import sillbook.chart.PotDrawing.Side;

/** Pots from above and from the side. */
class PotPicturesTest {
    private static final PotDrawing FOUR = new PotDrawing(
            16,
            5,
            List.of(new Middle(-4, 4), new Middle(4, 4), new Middle(4, -4), new Middle(-4, -4)),
            new Side(10, 11, 1.3, 0.5));

    private static List<String> lines(Cells cells) {
        return cells.text().lines().map(String::stripTrailing).toList();
    }

    @Test
    void bulbsSitWhereTheyAreAndAreNumbered() {
        assertThat(lines(Drawing.of(new PotFromAbove(FOUR), 16, 8)))
                .containsExactly(
                        "  ⢀⣠⣴⡒⠉⠉⠉⠉⢒⣦⣄⡀",
                        " ⣠⠛  ⠉⢆  ⡰⠉  ⠛⣄",
                        "⢰⠻⣄1 ⢀⡎  ⢱⡀2 ⣠⠟⡆",
                        "⡇ ⠈⠙⠊⠉    ⠉⠑⠋⠁ ⢸",
                        "⡇ ⢀⣠⢤⣀    ⣀⡤⣄⡀ ⢸",
                        "⠸⣴⠋  ⠈⢧  ⡼⠁  ⠙⣦⠇",
                        " ⠙⣤4 ⣠⠏  ⠹⣄3 ⣤⠋",
                        "   ⠙⠻⠥⣀⣀⣀⣀⠬⠟⠋");
    }

    @Test
    void inPlainLettersTheRimAndTheNumbersStand() {
        assertThat(lines(Drawing.of(new PotFromAbove(FOUR), 16, 8, Alphabet.ASCII)))
                .containsExactly(
                        "  ............",
                        " ..          ..",
                        ". (1)     (2)  .",
                        ".              .",
                        ".              .",
                        ".              .",
                        " .(4)     (3)..",
                        "  ............");
    }

    @Test
    void fromTheSideTheyAreAsDeepAsTheySit() {
        assertThat(lines(Drawing.of(new PotFromSide(FOUR), 16, 6)))
                .containsExactly(
                        "⢣⡴⠖⠶⢄⢄⡤⠖⠖⢤⡄⡤⠖⠖⢦⡜",
                        "⣞⡄  ⠈⣿    ⣿⠁  ⢠⣳",
                        "⠘⢧⣀⣠⠜⠉⠦⣄⣠⠴⠉⠣⣄⣀⡼⠃",
                        " ⠘⡄          ⢠⠃",
                        "  ⢣⣀⣀⣀⣀⣀⣀⣀⣀⣀⣀⡜",
                        "");
    }

    @Test
    void noPictureIsDrawnWhereThereIsNoRoom() {
        for (int size = 0; size < 2; size++) {
            for (Alphabet alphabet : Alphabet.values()) {
                Drawing.of(new PotFromAbove(FOUR), size, size, alphabet);
                assertThat(Drawing.of(new PotFromSide(FOUR), size, size, alphabet)
                                .text()
                                .strip())
                        .isEmpty();
            }
        }
        assertThat(Drawing.of(new PotFromSide(FOUR), 9, 9, Alphabet.ASCII)
                        .text()
                        .strip())
                .isEmpty();
    }
}
