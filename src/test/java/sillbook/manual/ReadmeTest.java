// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sillbook.app.Folders;
import sillbook.app.demo.Demo;
import sillbook.handbook.Handbook;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.Window;
import sillbook.ui.screen.contents.Sillbook;

/** README, as far as it can be compared without starting the packaged program. {@link TourIT} presses its keys. */
class ReadmeTest {
    private static final String PICTURE = "Today of the demo: drawn by a test";
    private static final String PLACES = "where the journal lies: compared by a test";

    private final Page readme = Page.readme();

    @Test
    void itsPictureIsTodayOfTheDemo() {
        List<String> drawn = today();

        assertThat(Blocks.fenced(readme.rewritten(Blocks.refenced(readme, PICTURE, drawn)), PICTURE))
                .isEqualTo(drawn);
    }

    private static List<String> today() {
        LocalDate day = LocalDate.ofInstant(Demo.MOMENT, Demo.ZONE);
        Snapshot shown = new Snapshot(Demo.journal(), day, 0, 0);
        Window window = new Window(Window.SMALLEST, Alphabet.UNICODE);
        Copy copy = new Copy("demo.sillbook", true, false);
        return new Desk(Sillbook.open(Handbook.standard(), Desk.counting(), copy, shown, window)).lines();
    }

    @Test
    void theCommandThatTestsEverythingIsTheOneTheGateRuns() throws IOException {
        assertThat(readme.lines()).contains("mvn verify");
        assertThat(Files.readString(Path.of(".ci/run"))).contains("mvn -B clean verify");
    }

    @Test
    void theJournalLiesWhereItSays() {
        assertThat(Blocks.table(readme, PLACES))
                .containsExactly(
                        List.of("Linux", code(journal("Linux"))),
                        List.of("macOS", code(journal("Mac OS X"))),
                        List.of("Windows", code(windowsJournal())));
    }

    private static String journal(String system) {
        return Folders.of(Map.of(), system, Path.of("/~")).journal().toString().substring(1);
    }

    private static String windowsJournal() {
        Map<String, String> environment = Map.of("LOCALAPPDATA", "/%LOCALAPPDATA%");
        String journal =
                Folders.of(environment, "Windows 11", Path.of("/~")).journal().toString();
        return journal.substring(1).replace('/', '\\');
    }

    private static String code(String text) {
        return "`" + text + "`";
    }
}
