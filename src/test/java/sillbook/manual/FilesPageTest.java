// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.app.Folders;
import sillbook.store.Backups;

/** The page of files and variables says what the program does. */
class FilesPageTest {
    private static final Path PAGE = Path.of("docs/reference/files.md");
    private static final String FOLDERS = "the folders: compared by a test";
    private static final String VARIABLES = "the variables: compared by a test";

    /** A name in capitals, as a constant of the program's text or in its launcher. */
    private static final Pattern VARIABLE = Pattern.compile("\"([A-Z][A-Z_]{3,})\"|\\$\\{([A-Z_]+)");

    @TempDir
    private Path home;

    private final Page page = Page.of(PAGE);

    @Test
    void everyFolderIsThere() {
        List<String> lines = new ArrayList<>(Blocks.heading(page, FOLDERS));
        lines.add(row("the journal", Folders::journal));
        lines.add(row("its backups", folders -> Backups.of(folders.journal()).folder()));
        lines.add(row("reports of faults", Folders::state));
        lines.add(row("what can be made again", Folders::cache));
        List<String> anew = Blocks.retabled(page, FOLDERS, lines);

        assertThat(page.rewritten(anew).lines()).isEqualTo(anew);
    }

    private static String row(String what, Function<Folders, Path> where) {
        return Blocks.row(List.of(
                what,
                code(where.apply(folders("Linux"))),
                code(where.apply(folders("Mac OS X"))),
                code(where.apply(folders("Windows 11"))).replace('/', '\\')));
    }

    private static Folders folders(String system) {
        return Folders.of(Map.of("LOCALAPPDATA", "/%LOCALAPPDATA%"), system, Path.of("/~"));
    }

    private static String code(Path path) {
        return "`" + path.toString().substring(1) + "`";
    }

    @Test
    void everyVariableTheProgramAsksForIsThere() throws IOException {
        Set<String> listed = new TreeSet<>();
        Blocks.table(page, VARIABLES).forEach(row -> listed.add(row.get(0).replace("`", "")));

        assertThat(listed).isEqualTo(asked());
    }

    private static Set<String> asked() throws IOException {
        Set<String> asked = new TreeSet<>();
        try (Stream<Path> main = Files.walk(Path.of("src/main"))) {
            for (Path file : main.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(file);
                if (text.contains("environment") || file.startsWith("src/main/launcher")) {
                    VARIABLE.matcher(text)
                            .results()
                            .forEach(name -> asked.add(name.group(1) == null ? name.group(2) : name.group(1)));
                }
            }
        }
        return asked;
    }

    @Test
    void whatIsMadeIsForItsOwnerAlone() throws IOException {
        Shell shell = new Shell(home);
        shell.goOnTo(LocalDate.of(2026, 10, 14));
        shell.type("sillbook write 'place cellar, cellar'");
        shell.type("sillbook backup ~/copy.sillbook");
        Path journal = Folders.of(Map.of(), "Linux", home).journal();

        assertThat(rights(journal)).isEqualTo("rw-------");
        assertThat(rights(home.resolve("copy.sillbook"))).isEqualTo("rw-------");
        assertThat(rights(journal.resolveSibling(""))).isEqualTo("rwx------");
        try (Stream<Path> beside = Files.list(journal.resolveSibling(""))) {
            assertThat(beside).as("one file is left").containsExactly(journal);
        }
    }

    private static String rights(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }
}
