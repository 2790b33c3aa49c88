// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class PotLineTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Days SEASON = new Days(LocalDate.of(2026, 7, 1), LocalDate.of(2027, 7, 1));
    private static final RulerLayout NARROW = RulerLayout.of(SEASON, TODAY, 80);
    private static final RulerLayout WIDE = RulerLayout.of(SEASON, TODAY, 120);

    private static StageSpan span(PotStage stage, String from, String to) {
        return new StageSpan(stage, new Days(LocalDate.parse(from), LocalDate.parse(to)));
    }

    /** A letter a cell, small when foretold; the fold as a bar. */
    private static String drawn(RulerLayout ruler, PotLine line) {
        StringBuilder text = new StringBuilder();
        int today = ruler.todayCell().orElse(-1);
        for (int cell = 0; cell < line.cells().size(); cell++) {
            PotLine.Cell it = line.cells().get(cell);
            char letter = switch (it.stage()) {
                case BEFORE -> '.';
                case COLD -> 'C';
                case COOL_ROOM -> 'R';
                case WARM_ROOM -> 'W';
                case IN_BLOOM -> 'F';
                case AFTER_BLOOM -> 'A';
                case GONE -> '_';
            };
            text.append(it.foretold() ? Character.toLowerCase(letter) : letter).append(cell == today ? "|" : "");
        }
        return text.toString();
    }

    private static final List<StageSpan> LATE_TULIP = List.of(
            span(PotStage.COLD, "2026-09-21", "2027-01-12"),
            span(PotStage.COOL_ROOM, "2027-01-12", "2027-01-19"),
            span(PotStage.WARM_ROOM, "2027-01-19", "2027-01-31"),
            span(PotStage.IN_BLOOM, "2027-01-31", "2027-02-10"),
            span(PotStage.AFTER_BLOOM, "2027-02-10", "2027-03-10"));

    @Test
    void aTulipLateForTheCoolRoomStillStandsInTheColdToday() {
        String line = drawn(NARROW, PotLine.of(NARROW, LATE_TULIP, Optional.of(PotStage.COLD)));

        assertThat(line).isEqualTo(".".repeat(12) + "C".repeat(17) + "|rwfaaaa" + "_".repeat(17));
    }

    @Test
    void aStageThatWouldVanishTakesACellOfOneThatKeepsAnother() {
        List<StageSpan> spans = List.of(
                span(PotStage.COLD, "2026-09-21", "2026-12-21"),
                span(PotStage.COOL_ROOM, "2026-12-21", "2026-12-23"),
                span(PotStage.WARM_ROOM, "2026-12-23", "2027-01-11"));

        assertThat(drawn(NARROW, PotLine.of(NARROW, spans, Optional.empty())))
                .isEqualTo(".".repeat(12) + "C".repeat(13) + "RWW_|" + "_".repeat(24));
    }

    @Test
    void aStageThatWouldVanishLeavesANeighbourItsOnlyCell() {
        List<StageSpan> spans = List.of(
                span(PotStage.COLD, "2026-09-21", "2026-12-21"),
                span(PotStage.COOL_ROOM, "2026-12-21", "2026-12-23"),
                span(PotStage.WARM_ROOM, "2026-12-23", "2026-12-28"));

        assertThat(drawn(NARROW, PotLine.of(NARROW, spans, Optional.empty())))
                .isEqualTo(".".repeat(12) + "C".repeat(13) + "W___|" + "_".repeat(24));
    }

    /** In bloom since 6 January, the seventh of eleven days today: drawn at one and at two cells a week. */
    @Test
    void aCrocusInBloomShowsTheStageOfMostDaysAndTheLaterOnATie() {
        List<StageSpan> spans = List.of(
                span(PotStage.COLD, "2026-09-28", "2026-12-22"),
                span(PotStage.COOL_ROOM, "2026-12-22", "2026-12-28"),
                span(PotStage.WARM_ROOM, "2026-12-28", "2027-01-06"),
                span(PotStage.IN_BLOOM, "2027-01-06", "2027-01-17"),
                span(PotStage.AFTER_BLOOM, "2027-01-17", "2027-02-14"));

        assertThat(drawn(NARROW, PotLine.of(NARROW, spans, Optional.empty())))
                .isEqualTo(".".repeat(13) + "C".repeat(12) + "RWFF|aaaa" + "_".repeat(20));
        assertThat(drawn(WIDE, PotLine.of(WIDE, spans, Optional.empty())))
                .isEqualTo(".".repeat(12) + "C".repeat(24) + "RRWWFFF|f" + "a".repeat(8) + "_".repeat(40));
    }

    @Test
    void aStageThatWouldVanishFindsTheNeighbourThatKeepsACell() {
        List<StageSpan> spans = List.of(
                span(PotStage.COLD, "2026-09-21", "2026-12-25"),
                span(PotStage.COOL_ROOM, "2026-12-25", "2026-12-31"),
                span(PotStage.WARM_ROOM, "2026-12-31", "2027-01-04"),
                span(PotStage.IN_BLOOM, "2027-01-04", "2027-01-18"));

        assertThat(drawn(NARROW, PotLine.of(NARROW, spans, Optional.empty())))
                .isEqualTo(".".repeat(12) + "C".repeat(13) + "RWFF|" + "_".repeat(24));
    }

    @Test
    void todaysCellShowsTodaysStageEvenIfItHoldsOneDayOfIt() {
        List<StageSpan> spans = List.of(
                span(PotStage.WARM_ROOM, "2026-12-01", "2027-01-12"),
                span(PotStage.IN_BLOOM, "2027-01-12", "2027-01-13"));

        assertThat(PotLine.of(NARROW, spans, Optional.empty()).cells().get(28))
                .isEqualTo(new PotLine.Cell(PotStage.IN_BLOOM, false));
    }

    @Test
    void aPotWithoutAPastIsNotDrawn() {
        assertThat(drawn(NARROW, PotLine.of(NARROW, List.of(), Optional.empty())))
                .doesNotContain(".");
    }

    @RepeatedTest(100)
    void stagesKeepTheirOrderAndNoneVanishesThatHasAWeekToItself(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        LocalDate day = LocalDate.of(2026, 7, 1).plusDays(random.nextInt(150));
        List<PotStage> stages =
                List.of(PotStage.COLD, PotStage.COOL_ROOM, PotStage.WARM_ROOM, PotStage.IN_BLOOM, PotStage.AFTER_BLOOM);
        List<StageSpan> spans = new ArrayList<>();
        for (PotStage stage : stages) {
            int days = random.nextInt(40);
            spans.add(new StageSpan(stage, Days.of(day, days)));
            day = day.plusDays(days);
        }
        PotLine line = PotLine.of(NARROW, spans, Optional.empty());
        List<PotStage> seen = line.cells().stream().map(PotLine.Cell::stage).collect(Collectors.toList());

        assertThat(seen).isSorted();
        spans.stream()
                .filter(span -> span.days().count() >= 13)
                .forEach(span -> assertThat(seen).contains(span.stage()));
    }
}
