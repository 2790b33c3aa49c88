// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.IOException;
import java.util.Optional;

final class TalksToTheTerminal {
    private TalksToTheTerminal() {}

    static void say(String words) {
        System.out.println(words);
        System.err.println(words);
    }

    static int hear() throws IOException {
        return System.in.read();
    }

    static Optional<Console> terminal() {
        return Optional.ofNullable(System.console());
    }

    static boolean isOpen() {
        return FileDescriptor.out.valid();
    }

    static void complain(Exception problem) {
        problem.printStackTrace();
    }
}
