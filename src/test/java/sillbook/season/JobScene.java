// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sillbook.model.Findings.Growth;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.season.Winter.Look;

/**
 * A winter in which a row of docs/jobs.md happens to one tulip, or to one amaryllis.
 *
 * @param bases the days that the row's days are counted from
 * @param closings what closes the job, each on its own
 */
record JobScene(Winter winter, String today, Map<String, String> bases, List<UnaryOperator<Winter>> closings) {

    /** A new winter each time: closing the job changes it. */
    static JobScene of(JobKind kind) {
        return switch (kind) {
            case POT_UP ->
                new JobScene(house(), "1 aug", Map.of("season", "1 jul"), List.of(winter -> winter.potted("1 aug")));
            case INTO_COLD -> intoCold();
            case CHECK -> check();
            case BRING_IN ->
                new JobScene(
                        inCold(),
                        "20 dec",
                        Map.of("cold-began", "1 oct"),
                        List.of(winter -> winter.moved("20 dec", "stair window")));
            case MOVE_TO_WARMTH -> moveToWarmth();
            case WATCH_FOR_FLOWER ->
                new JobScene(
                        inCool().moved("21 jan", "kitchen sill"),
                        "22 jan",
                        Map.of("warm-room-began", "21 jan"),
                        List.of(winter -> winter.flowered("22 jan")));
            case KEEP_COOL_IN_BLOOM -> keepCool();
            case PAST_BLOOM -> pastBloom();
            case WRITE_OUTCOME ->
                new JobScene(
                        inBloom(),
                        "8 feb",
                        Map.of("bloom-began", "4 feb"),
                        List.of(
                                winter -> winter.outcome("8 feb", 4),
                                winter -> winter.outcomeOf("Tuesday Coat", "8 feb", 4),
                                winter -> winter.leftOut("8 feb", JobKind.WRITE_OUTCOME)));
            case AFTERCARE -> aftercare();
            case FEED -> feed();
            case PUT_OUTDOORS -> putOutdoors();
            case TAKE_INDOORS -> takeIndoors();
            case START_REST -> startRest();
            case WAKE -> wake();
            case REPOT -> repot();
            case DAILY_CARE -> dailyCare();
            case DIG_TRENCH ->
                new JobScene(
                        trench(),
                        "10 oct",
                        groundDays(),
                        List.of(
                                winter -> winter.tended("10 oct", Care.DUG),
                                winter -> winter.potted("10 oct", "trench"),
                                winter -> winter.roundLeftOut("10 oct", JobKind.DIG_TRENCH)));
            case POTS_IN ->
                new JobScene(
                        trench(),
                        "25 oct",
                        groundDays(),
                        List.of(
                                winter -> winter.potted("25 oct", "trench"),
                                winter -> winter.roundLeftOut("25 oct", JobKind.POTS_IN)));
            case COVER_TRENCH ->
                new JobScene(
                        trench().potted("20 oct", "trench"),
                        "10 nov",
                        groundDays(),
                        List.of(
                                winter -> winter.tended("10 nov", Care.COVERED),
                                winter -> winter.moved("10 nov", "cellar"),
                                winter -> winter.roundLeftOut("10 nov", JobKind.COVER_TRENCH)));
            case LIFT_POTS ->
                new JobScene(
                        trench().potted("20 oct", "trench"),
                        "27 dec",
                        groundDays(),
                        List.of(
                                winter -> winter.moved("27 dec", "cellar"),
                                winter -> winter.roundLeftOut("27 dec", JobKind.LIFT_POTS)));
        };
    }

    Outlook outlook() {
        return winter.on(today);
    }

    LocalDate base(String name) {
        return name.equals("today")
                ? winter.day(today)
                : winter.day(Optional.ofNullable(bases.get(name)).orElseThrow());
    }

    private static Winter house() {
        return Winter.winter()
                .place("cellar", Sort.CELLAR)
                .place("stair window", Sort.COOL_ROOM)
                .place("kitchen sill", Sort.WARM_SILL)
                .pot("T1", "Tuesday Coat", "tulip");
    }

    /** The valley of {@link GroundForetoldTest}, its trench under straw; the last place is the trench. */
    private static Winter trench() {
        return house().place("trench", Sort.TRENCH)
                .ground(25, Optional.of(Winter.straw(10)), GroundForetoldTest.VALLEY);
    }

    /** As {@code GroundForetoldTest} holds them to the waves. */
    private static Map<String, String> groundDays() {
        return Map.of("pots-in", "22 oct", "ground-freezes", "20 nov", "first-frost", "4 nov", "shut", "31 dec");
    }

    private static Winter inCold() {
        return house().potted("1 oct", "cellar");
    }

    private static Winter inCool() {
        return inCold().moved("14 jan", "stair window");
    }

    private static Winter inBloom() {
        return inCold().moved("14 jan", "kitchen sill").flowered("4 feb");
    }

    private static Winter afterBloom() {
        return inBloom().pastBloom("14 feb");
    }

    private static JobScene intoCold() {
        return new JobScene(
                house().potted("3 oct"),
                "5 oct",
                Map.of("potted", "3 oct"),
                List.of(
                        winter -> winter.moved("5 oct", "cellar"),
                        winter -> winter.saw("5 oct", Look.roots().growth(Growth.BUDS))));
    }

    private static JobScene check() {
        return new JobScene(
                inCold(),
                "11 oct",
                Map.of("look", "1 oct"),
                List.of(
                        winter -> winter.checked("11 oct"),
                        winter -> winter.place("frame", Sort.COLD_FRAME).moved("11 oct", "frame"),
                        winter -> winter.place("loft", Sort.OTHER)
                                .moved("2 oct", "loft")
                                .roundLeftOut("11 oct", JobKind.CHECK)));
    }

    private static JobScene moveToWarmth() {
        return new JobScene(
                inCool(),
                "15 jan",
                Map.of("cool-room-began", "14 jan"),
                List.of(winter -> winter.moved("15 jan", "kitchen sill"), winter -> winter.flowered("15 jan")));
    }

    private static JobScene keepCool() {
        return new JobScene(
                inBloom(),
                "6 feb",
                Map.of("bloom-began", "4 feb"),
                List.of(winter -> winter.moved("6 feb", "stair window")));
    }

    private static JobScene pastBloom() {
        return new JobScene(
                inBloom().moved("4 feb", "stair window"),
                "6 feb",
                Map.of("bloom-began", "4 feb"),
                List.of(winter -> winter.pastBloom("6 feb"), winter -> winter.closed("6 feb", End.GIVEN)));
    }

    private static JobScene aftercare() {
        return new JobScene(
                afterBloom().outcome("15 feb", 4),
                "16 feb",
                Map.of("past-bloom", "14 feb"),
                List.of(
                        winter -> winter.cared("16 feb", Care.PLANTED_OUT),
                        winter -> winter.cared("16 feb", Care.REPOTTED),
                        winter -> winter.cared("16 feb", Care.LEAVES_CUT),
                        winter -> winter.cared("16 feb", Care.RESTED),
                        winter -> winter.closed("16 feb", End.FINISHED)));
    }

    /** An amaryllis, potted in that season and past the bloom of its first winter. */
    private static Winter amaryllis(int year) {
        return Winter.winter()
                .of(year)
                .place("sill", Sort.WARM_SILL)
                .pot("A1", "Lantern Row", "amaryllis")
                .potted("20 nov", "sill")
                .flowered("10 jan")
                .pastBloom("10 feb")
                .outcome("10 feb", 4);
    }

    private static JobScene feed() {
        return new JobScene(
                amaryllis(2026),
                "3 mar",
                Map.of("fed", "10 feb"),
                List.of(
                        winter -> winter.cared("3 mar", Care.FED),
                        winter -> winter.cared("3 mar", Care.RESTED),
                        winter -> winter.leftOut("3 mar", JobKind.FEED)));
    }

    private static JobScene putOutdoors() {
        return new JobScene(
                amaryllis(2026),
                "26 may",
                Map.of("season", "1 jul"),
                List.of(
                        winter -> winter.cared("26 may", Care.OUTDOORS),
                        winter -> winter.cared("26 may", Care.RESTED),
                        winter -> winter.leftOut("26 may", JobKind.PUT_OUTDOORS)));
    }

    private static JobScene takeIndoors() {
        return new JobScene(
                amaryllis(2026).cared("26 may", Care.OUTDOORS).of(2027),
                "16 sep",
                Map.of("season", "1 jul"),
                List.of(
                        winter -> winter.cared("16 sep", Care.BROUGHT_IN),
                        winter -> winter.cared("16 sep", Care.RESTED)));
    }

    private static JobScene startRest() {
        return new JobScene(
                amaryllis(2026).of(2027),
                "16 sep",
                Map.of("season", "1 jul"),
                List.of(
                        winter -> winter.cared("16 sep", Care.RESTED),
                        winter -> winter.cared("16 sep", Care.WOKEN),
                        winter -> winter.leftOut("16 sep", JobKind.START_REST)));
    }

    private static JobScene wake() {
        return new JobScene(
                amaryllis(2026).of(2027).cared("16 sep", Care.RESTED),
                "18 nov",
                Map.of("rest-began", "16 sep"),
                List.of(winter -> winter.cared("18 nov", Care.WOKEN), winter -> winter.flowered("18 nov")));
    }

    private static JobScene repot() {
        return new JobScene(
                amaryllis(2023).of(2026).cared("16 sep", Care.RESTED).cared("18 nov", Care.WOKEN),
                "18 nov",
                Map.of("woken", "18 nov"),
                List.of(
                        winter -> winter.cared("18 nov", Care.REPOTTED),
                        winter -> winter.flowered("18 nov"),
                        winter -> winter.leftOut("18 nov", JobKind.REPOT)));
    }

    private static JobScene dailyCare() {
        return new JobScene(
                inCool(),
                "16 jan",
                Map.of(),
                List.of(
                        winter -> winter.checked("16 jan"),
                        winter -> winter.cared("16 jan", Care.TURNED),
                        winter -> winter.flowered("16 jan"),
                        winter -> winter.moved("16 jan", "kitchen sill"),
                        Winter::withoutDailyCare));
    }
}
