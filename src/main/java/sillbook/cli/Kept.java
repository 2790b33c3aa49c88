// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import sillbook.app.Result;

/** Says what came of a change. */
final class Kept {
    private Kept() {}

    /**
     * Prints the name of the step that was done, or says why there is none.
     *
     * @return the code to end with
     */
    static int say(Result result, String done, Printer printer) {
        if (result instanceof Result.Done kept) {
            printer.line(done + kept.step());
            return ExitCode.DONE;
        }
        printer.say(
                result instanceof Result.Refused refused ? refused.sentence() : ((Result.Failed) result).sentence());
        return ExitCode.COULD_NOT;
    }
}
