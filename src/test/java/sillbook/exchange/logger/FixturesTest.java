// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.LoggerFormat;
import sillbook.words.Complaint;
import sillbook.words.logger.Counted;
import sillbook.words.logger.Understood;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;
import sillbook.words.logger.Understood.Question;

/** The variants in which thermometers write their files, each a file of our own invention beside what is to come of it. */
class FixturesTest {
    static Stream<Fixture> all() {
        return Fixture.all().stream();
    }

    private static LoggerFile look(Fixture fixture, LoggerFormat told) {
        return look(fixture.source(), told);
    }

    private static LoggerFile look(Source source, LoggerFormat told) {
        return LoggerFile.look(source, told, List.of(), Fixture.HOME).value().orElseThrow();
    }

    private static Stream<Fixture> readable() {
        return all().filter(fixture -> !fixture.isRefused());
    }

    @ParameterizedTest
    @MethodSource("readable")
    void givesItsReadings(Fixture fixture) {
        assertThat(readings(look(fixture, fixture.told()))).isEqualTo(fixture.readings());
    }

    private static List<Taken> readings(LoggerFile file) {
        List<Taken> found = new ArrayList<>();
        try (LoggerFeed feed = file.feed()) {
            while (feed.advance()) {
                found.add(new Taken(Instant.ofEpochSecond(feed.at()), feed.milli(), feed.isSuspicious()));
            }
        }
        return found;
    }

    /** Many thermometers, and people who cut a file by hand, leave it out. */
    @ParameterizedTest
    @MethodSource("readable")
    void givesThemWithoutTheEndOfTheLastLineToo(Fixture fixture, @TempDir Path folder) throws IOException {
        byte[] whole = Files.readAllBytes(fixture.file());
        int end = whole.length;
        while (whole[end - 1] == '\n' || whole[end - 1] == '\r' || whole[end - 1] == 0) {
            end--;
        }
        boolean isCutInPair = whole[0] == (byte) 0xff && end % 2 == 1;
        Path cut = folder.resolve(fixture.file().getFileName());
        Files.write(cut, Arrays.copyOf(whole, isCutInPair ? end + 1 : end));

        assertThat(readings(look(Source.of(cut), fixture.told()))).isEqualTo(fixture.readings());
    }

    @ParameterizedTest
    @MethodSource("readable")
    void countsItsLines(Fixture fixture) {
        Counted counted = counted(fixture);
        Map<String, String> found = new LinkedHashMap<>();
        found.put("without value", Long.toString(counted.withoutValue()));
        found.put("others", Long.toString(counted.others()));
        found.put("unreadable", unreadable(counted));
        assertThat(fixture.expected()).containsAllEntriesOf(found);
        assertThat(counted.readings()).isEqualTo(fixture.readings().size());
        assertThat(counted.suspicious())
                .isEqualTo(
                        fixture.readings().stream().filter(Taken::isSuspicious).count());
    }

    private static Counted counted(Fixture fixture) {
        try (LoggerFeed feed = look(fixture, fixture.told()).feed()) {
            while (feed.advance()) {}
            return feed.counted();
        }
    }

    private static String unreadable(Counted counted) {
        List<String> lines = counted.strange().stream()
                .filter(Counted.Strange::isUnreadable)
                .map(strange -> Integer.toString(strange.line()))
                .toList();
        return lines.isEmpty() ? "none" : String.join(" ", lines);
    }

    @ParameterizedTest
    @MethodSource("readable")
    void isUnderstood(Fixture fixture) {
        Map<String, String> said = said(look(fixture, fixture.told()).understood(), counted(fixture));
        fixture.expected().forEach((fact, value) -> {
            if (said.containsKey(fact)) {
                assertThat(said).as(fixture.name()).containsEntry(fact, value);
            }
        });
    }

    private static Map<String, String> said(Understood understood, Counted counted) {
        Map<String, String> said = new LinkedHashMap<>();
        said.put("code", understood.code().name());
        said.put("separator", understood.separator().value().name());
        said.put("decimal", understood.decimalSign().value().name());
        said.put("dates", understood.dates().order().map(FixturesTest::said).orElse("open"));
        said.put(
                "proof",
                understood
                        .dates()
                        .proof()
                        .map(Proof::line)
                        .map(Object::toString)
                        .orElse("none"));
        said.put("unit", said(understood.unit()));
        said.put("rows name unit", Boolean.toString(understood.rowsNameUnit()));
        said.put("zone", said(understood.clock().zone()));
        said.put("rows name zone", Boolean.toString(understood.clock().rowsNameZone()));
        said.put("half days", Boolean.toString(understood.clock().isHalfDays()));
        said.put("stays behind", Boolean.toString(understood.clock().staysBehind()));
        said.put("heading", Boolean.toString(understood.hasHeading()));
        said.put("before", Integer.toString(understood.linesBefore()));
        said.put("form", understood.when().form().name());
        said.put(
                "column",
                understood
                        .temperature()
                        .map(Column::number)
                        .map(Object::toString)
                        .orElse("open"));
        said.put(
                "candidates",
                String.join(
                        " ",
                        understood.temperatures().stream()
                                .map(Column::number)
                                .map(Object::toString)
                                .toList()));
        said.put(
                "twice",
                counted.twice().isEmpty() ? "never" : counted.twice().get(0).toString());
        return said;
    }

    private static String said(Found<?> found) {
        return found.value() + " " + found.basis();
    }

    @ParameterizedTest
    @MethodSource("readable")
    void asksWhatMayNotBeGuessed(Fixture fixture) {
        LoggerFile file = look(fixture, LoggerFormat.OPEN);
        List<Question> asked = file.understood().questions();
        assertThat(String.join(" ", asked.stream().map(Question::name).toList()))
                .isEqualTo(fixture.expected().getOrDefault("asks", ""));
        if (!asked.isEmpty()) {
            assertThatThrownBy(file::feed).isInstanceOf(IllegalStateException.class);
        }
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefused(Fixture fixture) {
        assertThat(LoggerFile.look(fixture.source(), LoggerFormat.OPEN, List.of(), Fixture.HOME)
                        .complaint()
                        .map(Complaint::sentence))
                .contains(fixture.expected().get("refused"));
    }

    static Stream<Fixture> refused() {
        return all().filter(Fixture::isRefused);
    }

    @Test
    void eachVariantIsThere() {
        List<String> numbers =
                all().map(fixture -> fixture.name().substring(1, 3)).distinct().toList();
        assertThat(numbers).hasSize(26).startsWith("01").endsWith("26");
    }
}
