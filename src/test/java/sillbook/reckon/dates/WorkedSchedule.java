// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One line of {@code worked-schedules.txt}: who published it, what is given, what must come out. */
record WorkedSchedule(String source, List<String> given, List<String> expected) {
    private static final int ABOUT = 2;

    static WorkedSchedule parse(String line) {
        String[] parts = line.split(" \\| ", -1);
        return new WorkedSchedule(parts[0], List.of(parts[1].split(", ")), List.of(parts[2].split(", ")));
    }

    void check() {
        Schedule schedule = Schedule.reckon(need(), facts()).orElseThrow();
        for (String entry : expected) {
            String word = entry.substring(0, entry.lastIndexOf(' '));
            String value = entry.substring(entry.lastIndexOf(' ') + 1);
            if (entry.startsWith("warns ")) {
                checkWarnings(schedule, entry.substring("warns ".length()));
            } else if (word.equals("in flower")) {
                assertThat(schedule.stages().bloom().contains(LocalDate.parse(value)))
                        .as("%s in %s", value, schedule.stages().bloom())
                        .isTrue();
            } else {
                checkWindow(
                        window(schedule.stages(), word.replace(" about", "")),
                        value,
                        word.endsWith(" about") ? ABOUT : 0);
            }
        }
    }

    private static void checkWarnings(Schedule schedule, String codes) {
        List<String> wanted = codes.equals("nothing") ? List.of() : Arrays.asList(codes.split(" and ", -1));
        assertThat(schedule.warnings()).extracting(Warning::code).containsExactlyElementsOf(wanted);
    }

    private static void checkWindow(Window window, String days, int tolerance) {
        String[] ends = days.split("\\.\\.", -1);
        assertNear(window.earliest(), LocalDate.parse(ends[0]), tolerance);
        assertNear(window.latest(), LocalDate.parse(ends[ends.length - 1]), tolerance);
    }

    private static void assertNear(LocalDate actual, LocalDate published, int tolerance) {
        assertThat(Math.abs(ChronoUnit.DAYS.between(published, actual)))
                .as("%s against the published %s", actual, published)
                .isLessThanOrEqualTo(tolerance);
    }

    private static Window window(Stages stages, String word) {
        return switch (word) {
            case "cold" -> stages.cold().orElseThrow();
            case "out" -> stages.broughtOut();
            case "warm" -> stages.warmRoom();
            case "bloom" -> stages.bloom();
            default -> throw new IllegalArgumentException(word);
        };
    }

    private Need need() {
        Need need = given("cold")
                .map(cold -> Need.ofCold(length(cold), length(given("after").orElseThrow())))
                .orElseGet(() -> Need.withoutCold(length(given("after").orElseThrow())));
        return given("cool").map(cool -> need.withCoolRoom(length(cool))).orElse(need);
    }

    private Facts facts() {
        Facts facts =
                Facts.NONE.withDryWeeks(given("dry").map(Double::parseDouble).orElse(0.0));
        facts = given("begun").map(LocalDate::parse).map(facts::withPotted).orElse(facts);
        facts = given("wish").map(LocalDate::parse).map(facts::withWish).orElse(facts);
        Facts begun = facts;
        return given("out")
                .map(day -> begun.with(Milestone.COOL_ROOM, LocalDate.parse(day)))
                .orElse(begun);
    }

    private Optional<String> given(String word) {
        return given.stream()
                .filter(entry -> entry.startsWith(word + " "))
                .map(entry -> entry.substring(word.length() + 1))
                .findFirst();
    }

    /** Weeks, or days where it says so: one number, or a low and a high with the middle between them. */
    private static DayCount length(String text) {
        String[] ends = text.replace(" days", "").split("-", -1);
        double low = Double.parseDouble(ends[0]);
        double high = Double.parseDouble(ends[ends.length - 1]);
        return text.endsWith(" days")
                ? DayCount.ofDays(low, (low + high) / 2, high)
                : DayCount.ofWeeks(low, (low + high) / 2, high);
    }
}
