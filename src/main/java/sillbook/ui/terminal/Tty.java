// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

/** Whether there is a terminal to draw on. */
public final class Tty {
    private Tty() {}

    /**
     * Whether input and output both are terminals, and not of the kind that can only print line after line ({@code TERM=dumb}); where they
     * are not, nothing of the full screen may be started.
     */
    public static boolean isInteractive() {
        return Stty.isTerminal();
    }
}
