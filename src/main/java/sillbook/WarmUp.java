// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import sillbook.app.Folders;
import sillbook.app.demo.Demo;
import sillbook.cli.Commands;
import sillbook.cli.ExitCode;
import sillbook.cli.World;
import sillbook.ui.terminal.Shell;
import sillbook.ui.terminal.Tty;

/**
 * Goes the ways a start goes, before no terminal and over a copy of the demo. It runs once, when the program is packaged, under a Java that lays
 * down the classes it meets in an archive: a start takes them from there, ready to run.
 */
public final class WarmUp {
    private static final List<List<String>> COMMANDS = List.of(
            List.of("today"), List.of("pots", "--json"), List.of("write", "--dry-run", "T4 roots"), List.of("undo"));

    private final Wiring wiring;
    private final Path journal;

    private WarmUp(Path folder) {
        this.wiring = new Wiring(Map.of("LANG", "C.UTF-8"), Folders.of(Map.of(), "Linux", folder));
        this.journal = folder.resolve("warm-up.sillbook");
    }

    /**
     * Goes all the ways.
     *
     * @param folder one that is empty, and stays behind with what is left in it
     */
    public static void main(String... folder) throws IOException {
        new WarmUp(Path.of(folder[0])).run();
    }

    private void run() throws IOException {
        Tty.isInteractive();
        Demo.Told told = Demo.told();
        told.begin(wiring.demoShelf(), journal).close();
        Shell.Ending ending = new Reception(wiring, journal).turnPages();
        if (!(ending instanceof Shell.Ending.Left)) {
            throw new IllegalStateException("the pages were not turned to the last: " + ending);
        }
        COMMANDS.forEach(this::carryOut);
    }

    private void carryOut(List<String> words) {
        String[] arguments = words.toArray(String[]::new);
        World world = new World(
                Map.of("SILLBOOK_JOURNAL", journal.toString()),
                wiring.folders(),
                wiring::demoShelf,
                () -> LocalDate.ofInstant(Demo.MOMENT, Demo.ZONE),
                new ByteArrayInputStream(new byte[0]),
                OutputStream.nullOutputStream(),
                OutputStream.nullOutputStream());
        int code = Commands.run(world, arguments);
        if (code == ExitCode.USED_WRONGLY) {
            throw new IllegalStateException("the program knows no " + words);
        }
    }
}
