// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may import whom, as DEVELOPERS.md has it. */
class ImportTableTest {
    private static ImportTable table(String root) {
        try {
            return ImportTable.over(root);
        } catch (IOException e) {
            throw new AssertionError("DEVELOPERS.md cannot be read", e);
        }
    }

    private static List<ImportTable.Row> rows() {
        return table(Classes.ROOT).rows();
    }

    static Stream<Named<ImportTable.Row>> namedRows() {
        return rows().stream().map(row -> Named.of(row.name(), row));
    }

    @ParameterizedTest
    @MethodSource("namedRows")
    void importsOnlyWhatItsRowNames(ImportTable.Row row) {
        table(Classes.ROOT).importsOf(row).check(Classes.SHIPPED);
    }

    @Test
    void everyClassStandsInARow() {
        table(Classes.ROOT).everyClassStandsInARow().check(Classes.SHIPPED);
    }

    @Test
    void everyRowImportsOnlyFromRowsAbove() {
        Set<String> above = new LinkedHashSet<>();
        for (ImportTable.Row row : rows()) {
            assertThat(above).as("above %s", row.name()).containsAll(row.imports());
            above.add(row.name());
        }
        assertThat(above)
                .contains("model", "store.sqlite", "ui.terminal")
                .last()
                .isEqualTo(ImportTable.MAIN);
    }

    @Test
    void noPackagesGoRoundInACircle() {
        noCircles(Classes.ROOT).check(Classes.SHIPPED);
    }

    @Test
    void aCircleIsFound() {
        assertThatThrownBy(() -> noCircles(Classes.OFFENDER_ROOT).check(Classes.OFFENDERS))
                .hasMessageContaining("Slice reckon.heat")
                .hasMessageContaining("Slice reckon.cold");
    }

    private static ArchRule noCircles(String root) {
        return slices().matching(root + ".(**)").should().beFreeOfCycles().allowEmptyShould(true);
    }

    @ParameterizedTest
    @CsvSource({
        "model,        KeepsAFile,          java.nio.file.Path",
        "change,       KnowsTheSeason,      season.Standing",
        "season,       OpensADatabase,      java.sql.Connection",
        "handbook,     AsksTheNet,          java.net.URI",
        "ui.screen,    DrawsWithLanterna,   com.googlecode.lanterna.TextColor",
        "app,          SpeaksJson,          com.fasterxml.jackson.databind.JsonNode",
        "ui.terminal,  ReadsTheCommandLine, picocli.CommandLine",
        "cli,          ReachesIntoStorage,  store.sqlite.Cellar",
    })
    void anImportBeyondTheRowIsFound(String name, String offender, String used) {
        ImportTable table = table(Classes.OFFENDER_ROOT);
        ImportTable.Row row = table.rows().stream()
                .filter(candidate -> candidate.name().equals(name))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> table.importsOf(row).check(Classes.OFFENDERS))
                .hasMessageContaining(offender)
                .hasMessageContaining(used);
    }

    @Test
    void aClassWithoutARowIsFound() {
        assertThatThrownBy(() ->
                        table(Classes.OFFENDER_ROOT).everyClassStandsInARow().check(Classes.OFFENDERS))
                .hasMessageContaining("offender.attic.Forgotten");
    }
}
