// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Published schedules, worked out again; the file names who published each. */
class WorkedSchedulesTest {

    @TestFactory
    Stream<DynamicTest> a_published_schedule_comes_out_as_published() {
        return schedules().stream()
                .map(schedule -> DynamicTest.dynamicTest(schedule.source() + " " + schedule.given(), schedule::check));
    }

    @Test
    void enough_of_them_are_looked_at() {
        assertThat(schedules().stream().map(WorkedSchedule::source).distinct()).hasSizeGreaterThanOrEqualTo(15);
    }

    private static List<WorkedSchedule> schedules() {
        try (InputStream in = WorkedSchedulesTest.class.getResourceAsStream("worked-schedules.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .map(WorkedSchedule::parse)
                    .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
