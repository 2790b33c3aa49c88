// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

/** The terminal did not do what was asked of it; it is most likely gone. */
public final class TerminalException extends RuntimeException {
    private static final long serialVersionUID = 1;

    TerminalException(String action, Throwable cause) {
        super(action + " failed: " + cause.getMessage(), cause);
    }
}
