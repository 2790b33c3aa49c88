// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

/** How a command ends. The table for users is in docs/reference/commands.md. */
public final class ExitCode {
    public static final int DONE = 0;
    public static final int COULD_NOT = 1;
    public static final int USED_WRONGLY = 2;

    private ExitCode() {}
}
