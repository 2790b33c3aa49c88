// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import picocli.CommandLine.Option;

/** Whether a command answers as JSON. */
final class JsonOption {
    @Option(names = "--json", description = "Answer as JSON, for other programs.")
    private boolean given;

    boolean isGiven() {
        return given;
    }
}
