// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;
import sillbook.model.Variety;

/** A list brought in from a file. How its rows are read is another test's. */
class ImportCommandTest {
    private static final String LIST = "name,kind,height,shelf\nMarrow Lane,tulip triumph,45,A\nInkwell,hyacinth,,B\n";

    @TempDir
    private Path home;

    /** The driver stays with the folder it was unpacked into first, so it is loaded while that folder is there. */
    @BeforeAll
    static void loadTheDriver(@TempDir Path first) {
        Terminal.ofDemo(first);
    }

    private String file(String text) throws IOException {
        return Files.writeString(home.resolve("list.csv"), text, UTF_8).toString();
    }

    @Test
    void everyRowIsSaidAndTheListIsOneStep() throws IOException {
        Terminal terminal = Terminal.at(home);
        Printed printed = terminal.run("import", file(LIST), "--as", "varieties");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).isEqualTo("""
                        row 2, new: 'Marrow Lane': tulip Triumph; 45 cm
                        row 3, new: 'Inkwell': hyacinth
                        list of varieties imported, 2 new
                        """);
        assertThat(printed.err()).startsWith("Began a journal, ").endsWith("\nLeft out: shelf.\n");
        assertThat(terminal.journal(home).varieties().all())
                .extracting(Variety::name)
                .containsExactly("Marrow Lane", "Inkwell");

        assertThat(terminal.run("undo").out()).isEqualTo("taken back: list of varieties imported, 2 new\n");
        assertThat(terminal.journal(home).varieties().all()).isEmpty();
    }

    @Test
    void aSecondTimeThereIsNothingNew() throws IOException {
        Terminal terminal = Terminal.at(home);
        terminal.run("import", file(LIST), "--as", "varieties");
        Printed again = terminal.run("import", file(LIST), "--as", "varieties");

        assertThat(again.code()).isEqualTo(ExitCode.DONE);
        assertThat(again.out()).isEqualTo("row 2, same: 'Marrow Lane'\nrow 3, same: 'Inkwell'\n");
        assertThat(again.err()).isEqualTo("Left out: shelf.\nAll that the list says is in the book already.\n");
    }

    @Test
    void aDryRunKeepsNothing() throws IOException {
        Terminal terminal = Terminal.at(home);
        Printed printed = terminal.run("import", file(LIST), "--as", "varieties", "--dry-run");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).hasLineCount(2);
        assertThat(home.resolve("winter.sillbook")).doesNotExist();
    }

    @Test
    void oneWrongRowKeepsTheWholeListOut() throws IOException {
        Terminal terminal = Terminal.at(home);
        Printed printed = terminal.run("import", file(LIST + "Bluejar,turnip,,\n"), "--as", "varieties");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.out())
                .endsWith("row 4, wrong: 'Bluejar': kind: 'turnip' is no kind of bulb. Did you mean tulip?\n");
        assertThat(printed.err())
                .endsWith("1 row is wrong, so nothing is imported. Mend the file, and import it again.\n");
        assertThat(home.resolve("winter.sillbook")).doesNotExist();
    }

    @Test
    void purchasesComeFromTheStandardInputToo() {
        Terminal terminal = Terminal.ofDemo(home).typing("variety;date;count;from\nMarrow Lane;2026-12-01;12;market\n");
        Printed printed = terminal.run("import", "-", "--as", "purchases", "--json");

        assertThat(printed.out())
                .contains("\"of\": \"purchases\"")
                .contains("\"step\": \"list of purchases imported, 1 new\"")
                .contains("\"outcome\": \"new\"");
        assertThat(printed.err()).isEmpty();
    }

    @Test
    void whatCannotBeReadIsSaidInOneSentence() throws IOException {
        Terminal terminal = Terminal.at(home);
        Printed nowhere = terminal.run("import", home.resolve("none.csv").toString(), "--as", "varieties");
        Printed folder = terminal.run("import", home.toString(), "--as", "varieties");
        Printed bare = terminal.run("import", file("height\n45\n"), "--as", "varieties");

        assertThat(nowhere.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(nowhere.err()).endsWith("none.csv: There is no such file. Nothing is imported.\n");
        assertThat(folder.err()).contains(": It could not be read: ").hasLineCount(1);
        assertThat(bare.err())
                .contains("list.csv: The first row names no column name.")
                .hasLineCount(1);
    }

    @Test
    void aSortThatIsNoneIsMisuse() throws IOException {
        assertThat(Terminal.at(home).run("import", file(LIST), "--as", "pots").err())
                .isEqualTo("'pots' is no sort of list. Write varieties or purchases.\n");
        assertThat(Terminal.at(home).run("import", file(LIST)).code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(Terminal.at(home).run("import", "a\0b", "--as", "varieties").code())
                .isEqualTo(ExitCode.USED_WRONGLY);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void noFileIsTooBroken(long seed) throws IOException {
        Random random = new Random(seed);
        String[] pieces = {
            "name", "kind", "date", "count", ",", ",", ";", "\n", "\n", "\"", "Inkwell", "tulip", "3", "31 nov", "\t",
            "é", "\u202E"
        };
        Terminal terminal = Terminal.at(home);
        for (int i = 0; i < 60; i++) {
            StringBuilder text = new StringBuilder(i % 2 == 0 ? "name,kind,date,count\n" : "");
            for (int at = random.nextInt(40); at > 0; at--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            String sort = random.nextBoolean() ? "varieties" : "purchases";
            Printed printed = terminal.run("import", file(text.toString()), "--as", sort, "--dry-run");

            assertThat(printed.code()).as(text.toString()).isIn(ExitCode.DONE, ExitCode.COULD_NOT);
            assertThat(printed.err()).doesNotContain("stumbled").doesNotContain("Exception");
        }
    }
}
