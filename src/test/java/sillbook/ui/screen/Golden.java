// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Size;

/**
 * Pictures of the screen kept beside the tests: as text, and as letters of styles. {@code -Dsillbook.goldens=write} draws them anew; look at
 * what changed before keeping it.
 */
public final class Golden {
    /** The sizes every page is looked at in. */
    public static final List<Size> SIZES = List.of(new Size(80, 24), new Size(100, 30), new Size(132, 43));

    private static final Path FOLDER = Path.of("src/test/resources/sillbook/screens");
    private static final boolean WRITES = "write".equals(System.getProperty("sillbook.goldens"));

    private Golden() {}

    /** Holds a state to its pictures in every size, and at the smallest also in plain ASCII. */
    public static void check(String name, State state) {
        SIZES.forEach(size -> check(name, state, size));
        checkAscii(name, state);
    }

    /** Holds a state to its picture in one size. */
    public static void check(String name, State state, Size size) {
        Cells cells = draw(state, size, Alphabet.UNICODE);
        hold(FOLDER.resolve(name + "." + size + ".txt"), cells.text());
        hold(FOLDER.resolve("styles").resolve(name + "." + size + ".txt"), cells.styles());
    }

    /** The picture where the locale is not UTF-8. */
    public static void checkAscii(String name, State state) {
        Size size = Window.SMALLEST;
        String text = draw(state, size, Alphabet.ASCII).text();
        assertThat(text.chars().allMatch(c -> c < 0x80)).as("only ASCII").isTrue();
        hold(FOLDER.resolve(name + "-ascii." + size + ".txt"), text);
    }

    private static Cells draw(State state, Size size, Alphabet alphabet) {
        State sized = Screens.update(state.with(new Window(state.window().size(), alphabet)), new Message.Resized(size))
                .state();
        return Screens.view(sized, size).cells();
    }

    private static void hold(Path file, String picture) {
        try {
            if (WRITES) {
                assertThat(System.getenv("CI"))
                        .as("pictures are not written in CI")
                        .isNull();
                Files.createDirectories(file.getParent());
                Files.writeString(file, picture + "\n");
            }
            assertThat(picture + "\n").as(file.toString()).isEqualTo(Files.readString(file));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
