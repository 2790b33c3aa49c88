// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sillbook.handbook.FigureName;
import sillbook.model.Findings.Growth;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Kind;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.season.Winter.Look;

/** Any winter at all, from a seed: sensible for the most part, and now and then as muddled as a real one. */
final class RandomWinter {
    private static final List<String> KINDS = List.of(
            "tulip",
            "tulip/Triumph",
            "daffodil",
            "hyacinth",
            "prepared hyacinth",
            "crocus",
            "snowdrop",
            "paperwhite",
            "amaryllis",
            "moonflower");

    private static final List<String> PLACES =
            List.of("cellar", "fridge", "trench", "frame", "stair window", "porch", "kitchen sill", "parlour sill");

    private final Random random;
    private final Winter winter = Winter.winter();
    private final LocalDate first = winter.day("1 jul");
    private final List<String> labels = new ArrayList<>();

    private RandomWinter(long seed) {
        random = new Random(seed);
    }

    static Winter of(long seed) {
        return new RandomWinter(seed).told();
    }

    /** A day of that winter to look at it from, told as a winter tells days. */
    static String today(long seed) {
        Random random = new Random(seed * 31 + 7);
        return told(LocalDate.of(2026, 9, 1).plusDays(random.nextInt(290)));
    }

    private static String told(LocalDate day) {
        return day.getDayOfMonth() + " " + day.getMonth().name().substring(0, 3);
    }

    private Winter told() {
        places();
        int rows = 3 + random.nextInt(10);
        for (int row = 0; row < rows; row++) {
            pots(row);
            life();
        }
        wishes();
        figures();
        answersOfPlaces();
        if (random.nextInt(6) == 0) {
            winter.withoutDailyCare();
        }
        return winter;
    }

    private void places() {
        winter.place("cellar", Sort.CELLAR).usually(6, 11);
        winter.place("fridge", Sort.FRIDGE).usually(2, 5).room(random.nextInt(6));
        winter.place("trench", Sort.TRENCH).cold("15 oct", "1 apr");
        winter.place("frame", Sort.COLD_FRAME).cold("1 nov", "10 feb").beside(Hazard.FRUIT, Hazard.MICE);
        winter.place("stair window", Sort.COOL_ROOM).every(1 + random.nextInt(3));
        winter.place("porch", Sort.PORCH).room(1 + random.nextInt(4));
        winter.place("kitchen sill", Sort.WARM_SILL);
        winter.place("parlour sill", Sort.WARM_SILL).room(2);
    }

    private void pots(int row) {
        String kind = one(KINDS);
        String name = "Number " + kind;
        int from = row * 10 + 1;
        if (random.nextInt(3) == 0) {
            winter.pots("B" + from + "-B" + (from + 1 + random.nextInt(4)), name, kind);
        } else if (random.nextInt(4) == 0) {
            String other = one(KINDS);
            winter.mixed("X" + from, name, kind, "Second " + other, other);
        } else {
            winter.pot("T" + from, name, kind);
        }
        labels.add(random.nextInt(3) == 0 ? "T" + from : "");
        if (random.nextInt(4) == 0) {
            winter.cooled(random.nextInt(14));
        } else if (random.nextInt(8) == 0) {
            winter.ordered();
        }
    }

    private String one(List<String> some) {
        return some.get(random.nextInt(some.size()));
    }

    /** From the potting on, each step with some chance; seldom out of order. */
    private void life() {
        LocalDate day = first.plusDays(60 + random.nextInt(90));
        if (random.nextInt(8) == 0) {
            return;
        }
        winter.potted(about(day));
        int steps = random.nextInt(10);
        for (int step = 0; step < steps; step++) {
            day = random.nextInt(12) == 0 ? day.minusDays(random.nextInt(30)) : day.plusDays(random.nextInt(40));
            step(told(day.isAfter(first.plusDays(360)) ? first.plusDays(360) : day));
        }
    }

    private String about(LocalDate day) {
        return (random.nextInt(4) == 0 ? "~" : "") + told(day);
    }

    private void step(String on) {
        switch (random.nextInt(12)) {
            case 0, 1, 2 -> winter.moved(on, one(PLACES));
            case 3 -> winter.moved(on, one(PLACES), any(Stage.values()));
            case 4 -> winter.saw(on, Look.roots().shoot(random.nextInt(12)));
            case 5 -> winter.saw(on, Look.noRoots());
            case 6 -> winter.saw(on, Look.ofShoot(random.nextInt(20)).growth(Growth.BUDS));
            case 7 -> winter.checked(on);
            case 8 -> winter.flowered(on);
            case 9 -> winter.pastBloom(on);
            case 10 -> answer(on);
            default -> rare(on);
        }
    }

    private void answer(String on) {
        JobKind kind = any(JobKind.values());
        if (random.nextBoolean()) {
            winter.leftOut(on, kind);
        } else {
            winter.putOff(on, kind, told(winter.day(on).plusDays(random.nextInt(20))));
        }
    }

    private void rare(String on) {
        switch (random.nextInt(4)) {
            case 0 -> winter.closed(on, any(End.values()));
            case 1 -> winter.cared(on, any(Care.values()));
            case 2 -> winter.outcome(on, 1 + random.nextInt(5));
            default -> winter.flowered(on, any(BloomPoint.values()), "Number " + one(KINDS));
        }
    }

    private void wishes() {
        for (String label : labels) {
            if (winter.has(label)) {
                LocalDate day = first.plusDays(150 + random.nextInt(120));
                winter.wish(told(day), told(day.plusDays(random.nextInt(5))), label);
            }
        }
    }

    private void figures() {
        FigureName[] names = {FigureName.COLD, FigureName.AFTER_COLD, FigureName.COOL_ROOM, FigureName.IN_BLOOM};
        for (int figure = random.nextInt(4); figure > 0; figure--) {
            double low = random.nextInt(12);
            double typical = low + random.nextInt(4);
            FigureName name = names[random.nextInt(names.length)];
            winter.own(Kind.of(one(KINDS)), name, low, typical, typical + random.nextInt(4));
        }
    }

    private void answersOfPlaces() {
        winter.place("loft", Sort.OTHER);
        if (random.nextBoolean()) {
            winter.roundLeftOut("20 dec", JobKind.CHECK).roundPutOff("4 jan", JobKind.CHECK, "9 jan");
        }
    }

    private <T> T any(T[] all) {
        return all[random.nextInt(all.length)];
    }
}
