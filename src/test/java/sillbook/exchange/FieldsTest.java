// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;

class FieldsTest {
    private static final LocalDate DAY = LocalDate.of(2027, 1, 12);

    @Test
    void fieldsKeepTheirOrderAndWhatIsNotKnownIsNull() {
        String document = new Fields()
                .text("name", "cellar")
                .text("note", Optional.empty())
                .whole("room", Optional.empty())
                .decimal("shootCm", Optional.empty())
                .day("since", Optional.empty())
                .happened("potted", Optional.empty())
                .object("batch", Optional.empty(), nothing -> new Fields())
                .write();

        assertThat(document).isEqualTo("""
                        {
                          "name": "cellar",
                          "note": null,
                          "room": null,
                          "shootCm": null,
                          "since": null,
                          "potted": null,
                          "batch": null
                        }""");
    }

    @Test
    void numbersAreUnroundedAndWholeOnesHaveNoPoint() {
        assertThat(new Fields()
                        .number("a", 2.0)
                        .number("b", 2.25)
                        .number("c", 1 / 3.0)
                        .write())
                .isEqualTo("{\n  \"a\": 2,\n  \"b\": 2.25,\n  \"c\": 0.3333333333333333\n}");
    }

    @Test
    void daysAreIsoAndAWindowIsThreeOfThem() {
        assertThat(new Fields()
                        .window(new Window(DAY, DAY.plusDays(1), DAY.plusDays(20)))
                        .write())
                .isEqualTo("""
                        {
                          "earliest": "2027-01-12",
                          "likely": "2027-01-13",
                          "latest": "2027-02-01"
                        }""");
    }

    @Test
    void aWordOfAFixedSetIsWrittenSmallWithHyphens() {
        assertThat(new Fields().code("stage", Stage.COOL_ROOM).write()).contains("\"cool-room\"");
    }

    @Test
    void listsMayBeEmpty() {
        assertThat(new Fields()
                        .texts("pots", List.of())
                        .texts("more", List.of("T1", "T2"))
                        .write())
                .isEqualTo("{\n  \"pots\": [],\n  \"more\": [\"T1\", \"T2\"]\n}");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001b[2J",
                "\u0000",
                "\u007f",
                "\u009b31m",
                "a\u202eb",
                "a\u2066b",
                "a\u2028b",
                "a\u2029b",
                "a\u200fb",
                "e\u0301",
                "\ufeff",
                "quote \" and \\ and / and \t"
            })
    void whatATerminalMustNotSeeIsEscapedAndComesBackWhole(String hostile) throws JsonProcessingException {
        String document = new Fields().text("name", hostile).write();

        assertThat(document.replace("\n", "").chars()).allMatch(c -> c >= 0x20 && c < 0x7F);
        assertThat(new ObjectMapper().readTree(document).get("name").textValue())
                .isEqualTo(hostile);
    }

    @Test
    void lettersOfOtherAlphabetsStandAsTheyAre() {
        assertThat(new Fields().text("name", "Élan, 春, Ω, 🌷").write()).contains("Élan, 春, Ω, 🌷");
    }
}
