// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

/** Which Sillbook this is. */
public final class Version {
    public static final String NUMBER = "0.1.0";

    /** What {@code --version} says. */
    public static final String LINE = "sillbook " + NUMBER;

    private Version() {}
}
