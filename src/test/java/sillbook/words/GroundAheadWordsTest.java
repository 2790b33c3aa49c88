// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Place;
import sillbook.season.Why;
import sillbook.words.line.Bench;

class GroundAheadWordsTest {
    private static Bench after(String... ground) {
        List<String> lines = new ArrayList<>(List.of("place gate, other"));
        lines.addAll(List.of(ground));
        return Shelves.after(lines);
    }

    private static Place trench(Bench bench) {
        return bench.journal().places().all().stream()
                .filter(place -> place.name().equals("trench"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> ahead(String... ground) {
        Bench bench = after(ground);
        return new GroundAheadWords(bench.journal().settings())
                .say(bench.outlook().ground(trench(bench).id()).orElseThrow());
    }

    private static Explanation why(String... ground) {
        Bench bench = after(ground);
        Why<?> why = bench.outlook().whys(trench(bench)).get(0);
        return new WhyWords(bench.journal(), Handbook.standard()).say(why);
    }

    @Test
    void inAColdValleyBareGroundIsShutAndFreezes() {
        assertThat(ahead("ground trench, 25 cm deep, means -6 -4 1 7 13 17 19 18 13 7 1 -4"))
                .containsExactly(
                        "Dig before 20 Nov, when bare ground freezes. Pots in about 22 Oct, when it is down to 7 C at their depth.",
                        "At 2 to 9 C there: 12 Oct to 18 Nov and 29 Mar to 4 May.",
                        "Coldest there about 23 Jan, -4.2 C. Frozen at the pots 1 Dec to 15 Mar.",
                        "Frozen shut 20 Nov to 13 Mar: lift before, or cover it thicker.",
                        "Chance of frost at the pots, cold spells counted in: more than 99 % (?), under straw 10 cm 92 %. "
                                + "Safe from 138 cm down.");
    }

    @Test
    void whereTheGroundStaysWarmNothingIsAsked() {
        assertThat(ahead("ground trench, 25 cm deep, bark 8 cm, means 11 11 12 13 15 17 18 18 17 15 13 12"))
                .containsExactly(
                        "The ground never freezes for long: it can be dug all winter. It never gets down to 7 C at the pots.",
                        "At 2 to 9 C there: never.",
                        "Coldest there about 17 Feb, 11.8 C: in a usual winter it does not freeze at the pots.",
                        "It stays open all winter under its cover: each pot can be lifted on its day.",
                        "Chance of frost at the pots, cold spells counted in: less than 1 % (?), bare less than 1 %. Safe at any depth.");
    }

    @Test
    void inTheGrowersUnits() {
        assertThat(ahead(
                        "set temperatures F",
                        "set lengths inches",
                        "place trench, -60 to 80 C",
                        "ground trench, 10in, means -20 -18 -14 -8 -2 4 8 6 0 -6 -14 -18"))
                .anySatisfy(line -> assertThat(line).contains("when it is down to 44.6 F at their depth"))
                .anySatisfy(line -> assertThat(line).contains("there: all year."))
                .anySatisfy(line -> assertThat(line).contains("under straw 3.9 in ", "Safe at no depth."));
    }

    @Test
    void everyFigureSaysWhatItRestsOn() {
        Explanation judged = why("ground trench, 25 cm deep, straw 10 cm, means -6 -4 1 7 13 17 19 18 13 7 1 -4");
        assertThat(judged.title()).isEqualTo("the ground foretold, chance of frost 92 %");
        assertThat(judged.total()).isEqualTo("92 %; safe from 50 cm down");
        assertThat(judged.from())
                .containsExactly(
                        "▫ rule: D. Hillel; G. S. Campbell and J. M. Norman; A. F. Moene and J. C. van Dam",
                        "? garden soil: 0.5 millionths of m2/s, 1 W/m/K (judged)",
                        "? straw: 0.1 W/m/K (judged, as it lies moist)",
                        "? spells of 3 C (judged, away from the sea)");
        assertThat(judged.sum())
                .extracting(Explanation.Line::what)
                .containsExactly("air, by its months", "ground, covered", "pots, bare", "pots, covered");

        Explanation known =
                why("ground trench, 25 cm deep, sand, snow 10 cm, spells 4 C, means -6 -4 1 7 13 17 19 18 13 7 1 -4");
        assertThat(known.from())
                .endsWith(
                        "▫ sand: 0.99 millionths of m2/s, 2.1 W/m/K (table 2.2)",
                        "▫ fresh snow: 0.1 W/m/K (table 2.2)",
                        "▪ spells of 4 C (your own)");

        Explanation own =
                why("ground trench, 25 cm deep, straw 10 cm at 0.06 W/m/K, means -6 -4 1 7 13 17 19 18 13 7 1 -4");
        assertThat(own.from()).contains("▪ straw: 0.06 W/m/K (your own)");

        Explanation bare = why("ground trench, 25 cm deep, means -6 -4 1 7 13 17 19 18 13 7 1 -4");
        assertThat(bare.sum()).extracting(Explanation.Line::what).containsExactly("air, by its months", "pots, bare");
        assertThat(bare.wouldChange())
                .containsExactly("It follows what is written of the ground: depth, soil, cover and months.");
    }
}
