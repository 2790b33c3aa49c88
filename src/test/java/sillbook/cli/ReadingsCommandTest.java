// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsCommandTest {
    @TempDir
    private Path home;

    private Terminal terminal;

    @BeforeEach
    void begin() throws IOException {
        terminal = Terminal.at(home);
        write("place porch, porch");
        write("place attic, other");
        Path file = home.resolve("porch-box.csv");
        Files.writeString(file, """
                time,temperature C
                2026-11-02 00:00:00,5.0
                2026-11-02 06:00:00,85.0
                2026-11-02 08:00:00,-999
                2026-11-02 10:00:00,-1.0
                2026-11-03 12:00:00,14.0
                2026-11-03 18:00:00,14.0
                """);
        assertThat(terminal.run("import", file.toString(), "--place", "porch").code())
                .isZero();
    }

    private void write(String line) {
        assertThat(terminal.run("write", line).code()).as(line).isZero();
    }

    private String said(String... options) {
        String[] all = new String[options.length + 1];
        all[0] = "readings";
        System.arraycopy(options, 0, all, 1, options.length);
        return terminal.run(all).out();
    }

    @Test
    void saysWhatWasReadAndWhereFrom() {
        write("porch 4.5 C, 4 nov 2026 at 7:30");

        assertThat(said("--place", "porch")).isEqualTo("""
                porch:
                  from porch-box.csv: 6 readings, 2 to 3 Nov, 2 suspicious
                  Mon  2 Nov 2026 00:00       5 C
                  Mon  2 Nov 2026 06:00      85 C, suspicious
                  Mon  2 Nov 2026 08:00    -999 C, suspicious
                  Mon  2 Nov 2026 10:00      -1 C
                  nothing known for 26 hours
                  Tue  3 Nov 2026 12:00      14 C
                  Tue  3 Nov 2026 18:00      14 C
                  nothing known for 13 hours
                  Wed  4 Nov 2026 07:30     4.5 C, typed
                """);
    }

    @Test
    void saysWhatDaysComeTo() {
        assertThat(said("--days")).isEqualTo("""
                porch:
                  Mon  2 Nov 2026: -1 to 5 C, mean 2 C; 10.0 h known, 6.7 h cold, 1.7 h below 0 C
                  Tue  3 Nov 2026: 14 C, mean 14 C; 6.0 h known, 0.0 h cold, 6.0 h above 13 C
                """);
    }

    @Test
    void saysTheLimitsInTheUnitOfTheJournal() {
        write("set temperature F");
        assertThat(said("--days")).contains("1.7 h below 32 F").contains("6.0 h above 55.4 F");
    }

    @Test
    void saysAStretchOnly() {
        assertThat(said("--from", "3 nov 2026", "--to", "3 nov 2026"))
                .startsWith("porch:")
                .contains("12:00", "18:00")
                .doesNotContain("2 Nov 2026");
        assertThat(said("--days", "--from", "4 nov 2026", "--to", "3 nov 2026")).isEmpty();
    }

    @Test
    void whereNothingWasReadSaysSo() {
        Terminal.Printed printed = terminal.run("readings", "--place", "attic");

        assertThat(printed.code()).isZero();
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).contains("Nothing was read there in that stretch.");
        assertThat(terminal.run("readings", "--place", "loft").code()).isEqualTo(ExitCode.COULD_NOT);
    }

    @Test
    void saysALowestAndHighestThatWasWritten() throws IOException {
        write("attic 3 to 8 since 1 nov 2026, 26 nov 2026");
        String span =
                "  3 to 8 C from Sun 1 Nov 2026, read Thu 26 Nov 2026: holds for 25 days, Sun 1 Nov 2026 to Wed 25"
                        + " Nov 2026\n";
        assertThat(said("--place", "attic")).isEqualTo("attic:\n" + span);
        assertThat(said("--place", "attic", "--from", "26 nov 2026")).isEqualTo("attic:\n" + span);
        assertThat(said("--place", "attic", "--days", "--from", "25 nov 2026")).isEqualTo("attic:\n" + span);
        assertThat(said("--place", "attic", "--from", "27 nov 2026")).isEmpty();
        assertThat(said("--place", "attic", "--days", "--from", "26 nov 2026")).isEmpty();
        for (String days : new String[] {"--to=12 jan 2027", "--days"}) {
            JsonNode one = new ObjectMapper()
                    .readTree(said("--json", "--place", "attic", days))
                    .at("/places/0/spans/0");
            assertThat(one.get("from").asText()).isEqualTo("2026-11-01");
            assertThat(one.get("to").asText()).isEqualTo("2026-11-26");
            assertThat(one.get("lowestC").asDouble()).isEqualTo(3);
            assertThat(one.get("highestC").asDouble()).isEqualTo(8);
            assertThat(one.get("days").asInt()).isEqualTo(25);
        }
    }

    @Test
    void answersAsJson() throws IOException {
        write("porch 4.5 C, 4 nov 2026 at 7:30");
        JsonNode place = new ObjectMapper()
                .readTree(said("--json", "--place", "porch"))
                .get("places")
                .get(0);

        assertThat(place.get("sources").get(0).get("readings").asInt()).isEqualTo(6);
        assertThat(place.get("readings")).hasSize(7);
        assertThat(place.get("readings").get(1).get("suspicious").asBoolean()).isTrue();
        assertThat(place.get("readings").get(1).get("line").asInt()).isEqualTo(3);
        assertThat(place.get("readings").get(6).get("source").isNull()).isTrue();
        assertThat(place.get("gaps")).hasSize(2);
        JsonNode days = new ObjectMapper()
                .readTree(said("--json", "--days"))
                .get("places")
                .get(0)
                .get("days");
        assertThat(days).hasSize(2);
        assertThat(days.get(0).get("freezingHours").asDouble()).isBetween(1.66, 1.67);
    }
}
