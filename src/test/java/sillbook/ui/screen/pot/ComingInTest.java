// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Findings;
import sillbook.model.Length;
import sillbook.model.Place.Sort;
import sillbook.model.Pot.Way;
import sillbook.season.Winter;
import sillbook.season.Winter.Look;
import sillbook.ui.screen.Desk;

/**
 * The rule for coming in, case by case, as it is read on Today, on Pots and on the card: weeks enough, and roots at the holes or a shoot
 * of 4 to 8 cm; a shoot never makes up for missing cold. (Roots, and a shoot of 1.5 in: Missouri Botanical Garden; 5 cm: a consumers' association; the
 * rest is common practice.)
 */
class ComingInTest {
    /** Of the foot: under the line that names the pot. */
    private static final int ASIDE = 22;

    @ParameterizedTest(name = "weeks {0}, roots {1}, shoot {2}")
    @CsvSource(delimiter = '|', textBlock = """
                    short  | none    | 2 | Not yet, with a shoot of 2 cm: cold enough about Mon 18 Jan.
                    short  | none    | 6 | Not yet, with a shoot of 6 cm: cold enough about Mon 18 Jan.
                    short  | none    | 9 | Shoot 9 cm, but 1 week short of cold: it is too warm here. Move it colder, do not bring it in.
                    short  | none    | ? | Not yet: cold enough about Mon 18 Jan.
                    short  | showing | 2 | Not yet, with roots and a shoot of 2 cm: cold enough about Mon 18 Jan.
                    short  | showing | 6 | Not yet, with roots and a shoot of 6 cm: cold enough about Mon 18 Jan.
                    short  | showing | 9 | Shoot 9 cm, but 1 week short of cold: it is too warm here. Move it colder, do not bring it in.
                    short  | showing | ? | Not yet, with roots: cold enough about Mon 18 Jan.
                    short  | ?       | 2 | Not yet, with a shoot of 2 cm: cold enough about Mon 18 Jan.
                    short  | ?       | 6 | Not yet, with a shoot of 6 cm: cold enough about Mon 18 Jan.
                    short  | ?       | 9 | Shoot 9 cm, but 1 week short of cold: it is too warm here. Move it colder, do not bring it in.
                    short  | ?       | ? | Not yet: cold enough about Mon 18 Jan.
                    enough | none    | 2 | Not ready: no roots yet; look again about Sun 24 Jan.
                    enough | none    | 6 | May come in: a shoot of 6 cm, though no roots were seen.
                    enough | none    | 9 | May come in: a shoot of 9 cm, though no roots were seen.
                    enough | none    | ? | Not ready: no roots yet; look again about Sun 24 Jan.
                    enough | showing | 2 | May come in: roots at the holes, a shoot of 2 cm.
                    enough | showing | 6 | May come in: roots at the holes, a shoot of 6 cm.
                    enough | showing | 9 | May come in: roots at the holes, a shoot of 9 cm.
                    enough | showing | ? | May come in: roots at the holes.
                    enough | ?       | 2 | Check first: only a shoot of 2 cm, and nobody has looked for roots.
                    enough | ?       | 6 | May come in: a shoot of 6 cm.
                    enough | ?       | 9 | May come in: a shoot of 9 cm.
                    enough | ?       | ? | Check first: nobody has looked for roots.
                    """)
    void isSaidOnTodayOnPotsAndOnTheCard(String weeks, String roots, String shoot, String sentence) {
        Desk desk = Desk.over(tulip(weeks, look(roots, shoot)).journal());

        assertThat(aside(desk.press("1"))).as("Today").contains(sentence);
        assertThat(aside(desk.press("2"))).as("Pots").contains(sentence);
        assertThat(aside(desk.press("Enter"))).as("the card").contains(sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    6  | Not ready: roots only 6 cm; look again about Sun 24 Jan.
                    12 | May come in: roots long enough.
                    """)
    void inAGlassTheLengthOfTheRootsCounts(double centimetres, String sentence) {
        Winter glass = tulip("enough", new Look(Findings.WATER_WELL.withRootLength(Length.ofCentimetres(centimetres))))
                .grown(Way.GLASS);
        Desk desk = Desk.over(glass.journal());

        assertThat(aside(desk.press("2"))).contains(sentence);
    }

    /** On 12 January sixteen weeks in, or fourteen; tulips want fifteen. */
    private static Winter tulip(String weeks, Look look) {
        return winter().place("cellar", Sort.CELLAR)
                .place("stair", Sort.COOL_ROOM)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted(weeks.equals("enough") ? "21 sep" : "5 oct", "cellar")
                .saw("10 jan", look);
    }

    private static Look look(String roots, String shoot) {
        Look look = switch (roots) {
            case "none" -> Look.noRoots();
            case "showing" -> Look.roots();
            default -> new Look(Findings.ALL_WELL);
        };
        return shoot.equals("?") ? look : look.shoot(Double.parseDouble(shoot));
    }

    /** Both lines of it, as one text. */
    private static String aside(Desk desk) {
        return desk.line(ASIDE).strip() + " " + desk.line(ASIDE + 1).strip();
    }
}
