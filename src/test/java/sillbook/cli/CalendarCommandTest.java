// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.cli.Terminal.Printed;

/** The calendar's file on disk. What stands in it is another test's. */
class CalendarCommandTest {
    @TempDir
    private Path home;

    @Test
    void writtenAgainOnlyWhatChangedIsRevised() throws IOException {
        Terminal terminal = Terminal.ofDemo(home);
        Path file = home.resolve("jobs.ics");
        Printed first = terminal.run("calendar", "--to", file.toString());
        String before = Files.readString(file);

        assertThat(first.code()).isEqualTo(ExitCode.DONE);
        assertThat(first.out()).isEmpty();
        assertThat(first.err()).matches("The calendar is .*jobs\\.ics, \\d+ jobs\\.\n");
        terminal.run("calendar", "--to", file.toString());
        assertThat(file).hasContent(before);

        terminal.run("write", "T4 stair window");
        terminal.run("calendar", "--to", file.toString());
        assertThat(Files.readString(file)).contains("STATUS:CANCELLED").contains("SEQUENCE:1");
        assertThat(home).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void withoutAFileItIsPrinted() {
        Printed printed = Terminal.ofDemo(home).run("calendar");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).startsWith("BEGIN:VCALENDAR\r\n").endsWith("END:VCALENDAR\r\n");
        assertThat(printed.err()).isEmpty();
    }

    @Test
    void aFileThatIsNoCalendarOfOursStaysAsItIs() throws IOException {
        Path file = Files.writeString(home.resolve("diary.txt"), "dear diary");
        Printed printed = Terminal.ofDemo(home).run("calendar", "--to", file.toString());

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).contains("is no calendar of Sillbook, and it is left as it is. Name another.");
        assertThat(file).hasContent("dear diary");
    }

    @Test
    void whereNothingCanBeWrittenThatIsSaid() {
        Printed printed = Terminal.ofDemo(home)
                .run("calendar", "--to", home.resolve("nowhere/jobs.ics").toString());

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err())
                .startsWith("The calendar could not be written to ")
                .hasLineCount(1);
    }

    @Test
    void aNameThatNoFileCanHaveIsMisuse() {
        Printed printed = Terminal.ofDemo(home).run("calendar", "--to", "a\0b");

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
    }
}
