// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sillbook.story.NeedsTmux;
import sillbook.story.Tmux;

/** README's five minutes in a real terminal: the command as printed, every key pressed, everything to look for seen. */
@ExtendWith(NeedsTmux.class)
class TourIT {
    private static final String TOUR = "the tour: pressed by a test";
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    /** Keys that pages name otherwise than the terminal does. */
    private static final Map<String, String> KEYS =
            Map.of("Esc", "Escape", "Enter", "Enter", "Down", "Down", "Up", "Up", "Space", "Space", "Tab", "Tab");

    @TempDir
    private Path home;

    private final Page readme = Page.readme();

    @Test
    void everyStepShowsWhatItSays() {
        try (Tmux terminal = open()) {
            Blocks.table(readme, TOUR).forEach(step -> take(terminal, step));

            assertThat(terminal.exitCode()).isZero();
            assertThat(home.resolve("data")).doesNotExist();
        }
    }

    private Tmux open() {
        return Tmux.terminal()
                .environment("XDG_DATA_HOME", home.resolve("data").toString())
                .environment("XDG_STATE_HOME", home.resolve("state").toString())
                .run("/bin/sh", "-c", demo());
    }

    /** What is to be typed to see the demo, once the program is packaged. */
    private String demo() {
        return readme.lines().stream()
                .filter(line -> line.startsWith("mvn -q -DskipTests package && "))
                .map(line -> line.substring(line.indexOf("&& ") + 3))
                .findFirst()
                .orElseThrow();
    }

    private static void take(Tmux terminal, List<String> step) {
        code(step.get(0)).forEach(key -> press(terminal, key));
        code(step.get(1)).forEach(terminal::waitFor);
    }

    private static void press(Tmux terminal, String key) {
        if (KEYS.containsKey(key)) {
            terminal.press(KEYS.get(key));
        } else {
            terminal.type(key);
        }
    }

    private static Stream<String> code(String cell) {
        return CODE.matcher(cell).results().map(code -> code.group(1));
    }
}
