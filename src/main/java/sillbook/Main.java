// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import sillbook.cli.Commands;
import sillbook.cli.ExitCode;
import sillbook.cli.Usage;
import sillbook.cli.World;
import sillbook.ui.terminal.Tty;

/**
 * Wires the program together and opens it. What opens the screens is read by hand: neither the commands' library nor
 * that for JSON is on the way to the first picture.
 */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        int code = run(arguments);
        System.out.flush();
        System.exit(code);
    }

    private static int run(String... arguments) {
        Opening opening = Opening.of(arguments);
        Wiring wiring = Wiring.ofThisProgram();
        return switch (opening.what()) {
            case SCREENS -> Tty.isInteractive() ? screens(wiring, opening) : usage();
            case DEMO -> Tty.isInteractive() ? reception(wiring, opening).openDemo() : command(wiring, arguments);
            case COMMAND -> command(wiring, arguments);
        };
    }

    private static int screens(Wiring wiring, Opening opening) {
        return reception(wiring, opening).openJournal();
    }

    private static Reception reception(Wiring wiring, Opening opening) {
        Path file = wiring.folders().journal(opening.journal(), wiring.environment());
        return new Reception(wiring, file);
    }

    private static int usage() {
        Usage.LINES.forEach(System.err::println);
        return ExitCode.USED_WRONGLY;
    }

    /** The standard output goes by its descriptor: the print stream over it keeps a full disk to itself. */
    private static int command(Wiring wiring, String... arguments) {
        World world = new World(
                wiring.environment(),
                wiring.folders(),
                wiring::shelf,
                () -> LocalDate.now(wiring.clock()),
                System.in,
                new FileOutputStream(FileDescriptor.out),
                System.err);
        return Commands.run(world, arguments);
    }
}
