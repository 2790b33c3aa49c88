// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page of JSON against what the commands print of the demo: every object printed has the fields of one of its tables, in that
 * order, and every table is that of an object that can be printed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JsonPageTest {
    /** Attention of five sorts, answers to jobs and what nobody can tell apart come of these; the demo has none of its own. */
    private static final List<String> LINES = List.of(
            "T4 later +3 because the sill is full",
            "cellar later +2",
            "D1 not at all because it stays",
            "T4 C1 into display hall table",
            "T4 staked",
            "place cellar, room 3, hazard fruit",
            "place garage fridge, cold 1 feb to 1 mar",
            "bought 20 Tuesday Coat, cellar, cooled 9 weeks, 1 jan",
            "place attic, cellar",
            "place gate, other",
            "ground trench, 25 cm deep, straw 10 cm, means -6 -4 1 7 13 17 19 18 13 7 1 -4",
            "ground gate, 9 cm deep, air from gate",
            "ground attic, 9 cm deep, leaves 5 cm, means 2 3 5 8 11 14 16 16 13 10 6 3",
            "Tin Starling x5, attic, 1 oct, label Z9",
            "attic -4 to 5 C, since 5 jan",
            "garage fridge 10 to 12 C, since 5 jan",
            "cellar 5.4 C, 20 dec",
            "cellar 5 C, 28 dec",
            "cellar 4.8 C, 11 jan",
            "place larder, cellar",
            "larder 3 to 8 C, since 5 jan",
            "Z9 score 4, 5 of 5 flowers, even, scent strong, again differently: in the fridge",
            "A1 past bloom",
            "A1 woken",
            "set aside Goose Errand, floppy two winters, for 2026-27",
            "choose Lantern Row x10",
            "wish something every day 10 jan to 25 mar 2028",
            "wish 2 scented pots 14 feb 2028",
            "order all chosen");

    private static final List<String> COMMANDS = List.of(
            "today",
            "today --on 2027-03-20",
            "pots",
            "pot T4",
            "pot T4 --season 2025",
            "pot A1",
            "pot H5",
            "pot T7 --season 2025",
            "places",
            "readings --place cellar",
            "readings --days",
            "ground",
            "round cellar",
            "labels T4",
            "bulbs",
            "potting tulip",
            "seasons",
            "standings",
            "choose",
            "plan",
            "supplies",
            "diary",
            "write --dry-run 'T4 moist'",
            "import docs/how-to/lists/purchases.csv --as purchases --dry-run",
            "import docs/how-to/lists/mistakes.csv --as varieties --dry-run",
            "import docs/how-to/lists/cellar-box.csv --place cellar --dry-run",
            "import docs/how-to/lists/cellar-box.csv --place cellar --dates dmy",
            "import docs/how-to/lists/cellar-box-later.csv --place cellar --dry-run",
            "verify",
            "reckon dates --kind tulip --potted 2026-10-01 --bloom 2027-01-05",
            "reckon cold docs/how-to/lists/cellar-readings.csv",
            "reckon cold docs/how-to/lists/fridge-spans.csv",
            "reckon heat docs/how-to/lists/sill-days.csv --need 350 --from 2027-02-01",
            "reckon soil --monthly=-5,-4,1,7,13,17,19,18,14,8,2,-3 --depth 20",
            "reckon fit --pot 6in --shape azalea --grade 12 --kind tulip --mix '3 loam, 2 peat'",
            "reckon fit --pot 20x16x22 --grade 9 --below 14",
            "reckon fit --pot 19 --grade 18x3,9x2",
            "reckon shelf --shelf 24x16in --pot 7.5in",
            "reckon shelf --stays docs/how-to/lists/stays.json",
            "reckon cover docs/how-to/lists/season.json",
            "reckon effects docs/how-to/lists/scores.csv --score score --factors variety,mix,place",
            "reckon effects docs/how-to/lists/two-places.csv --score score --factors kind,variety,place --method reml",
            "reckon stages --prior 14,21,28 --own 24,27,62");

    /** Objects whose fields are named as the reader's own columns and what stands in them are. */
    private static final Set<String> NAMED_BY_THE_READER = Set.of("sd", "levels");

    private final Set<List<String>> printed = new LinkedHashSet<>();

    @BeforeAll
    void printAll(@TempDir Path home, @TempDir Path ownHome) {
        printOfOwnTulips(new Shell(ownHome));
        Shell shell = new Shell(home);
        shell.layDemo();
        shell.type("sillbook plan --best --seconds 1 --keep Z");
        COMMANDS.forEach(command -> print(shell, command));
        LINES.forEach(line -> {
            assertThat(shell.type("sillbook write \"" + line + "\"")).isNotEmpty();
            assertThat(shell.code()).as(line).isZero();
        });
        COMMANDS.forEach(command -> print(shell, command));
        print(shell, "undo");
        print(shell, "redo");
    }

    /** Three tulips of which the buds were written tell when those of the fourth come; the demo has no such. */
    private void printOfOwnTulips(Shell shell) {
        shell.goOnTo(LocalDate.of(2026, 3, 20));
        shell.type("sillbook write 'place cellar, cellar'");
        shell.type("sillbook write 'place stair window, cool room'");
        for (String label : List.of("T1", "T2", "T3")) {
            shell.type("sillbook write 'Marrow Lane (tulip triumph) x5, cellar, 1 oct'");
            for (String said : List.of("stair window, 12 jan", "buds, 25 jan", "first flower, 8 feb")) {
                assertThat(shell.type("sillbook write '" + label + " " + said + "'"))
                        .isNotEmpty();
                assertThat(shell.code()).isZero();
            }
        }
        shell.goOnTo(LocalDate.of(2027, 1, 16));
        shell.type("sillbook write 'Marrow Lane x5, cellar, 1 oct, label T9'");
        shell.type("sillbook write 'T9 stair window, 14 jan'");
        print(shell, "pot T9");
    }

    private void print(Shell shell, String command) {
        String document = String.join("\n", shell.type("sillbook " + command + " --json"));
        try {
            look(new ObjectMapper().readTree(document), false);
        } catch (JsonProcessingException wrong) {
            throw new AssertionError(command + " printed no JSON: " + document, wrong);
        }
    }

    private void look(JsonNode node, boolean isNamedByTheReader) {
        if (!node.isObject()) {
            node.forEach(each -> look(each, false));
            return;
        }
        List<String> fields = new ArrayList<>();
        node.fieldNames().forEachRemaining(fields::add);
        if (!isNamedByTheReader) {
            printed.add(fields);
        }
        fields.forEach(field -> look(
                node.get(field),
                NAMED_BY_THE_READER.contains(field) || (isNamedByTheReader && holdsObjects(node.get(field)))));
    }

    private static boolean holdsObjects(JsonNode node) {
        return node.elements().hasNext() && node.elements().next().isObject();
    }

    private static Set<List<String>> tables() {
        Set<List<String>> tables = new LinkedHashSet<>();
        List<String> fields = new ArrayList<>();
        for (String line : Page.of(Path.of("docs/reference/json.md")).lines()) {
            if (line.startsWith("| `")) {
                fields.add(line.substring(3, line.indexOf('`', 3)));
            } else if (!fields.isEmpty()) {
                tables.add(List.copyOf(fields));
                fields.clear();
            }
        }
        tables.add(List.copyOf(fields));
        return tables;
    }

    @Test
    void everyObjectPrintedHasItsTable() {
        assertThat(printed).isSubsetOf(tables());
    }

    @Test
    void everyTableIsThatOfAnObjectPrinted() {
        assertThat(tables()).isSubsetOf(printed);
    }

    @Test
    void everyAnswerEndsWithItsWarningsAndAssumptions() {
        assertThat(printed.stream().filter(fields -> fields.contains("warnings")))
                .hasSize(32)
                .allSatisfy(fields -> assertThat(fields).endsWith("warnings", "assumed"));
    }
}
