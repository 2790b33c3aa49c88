// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import sillbook.app.Result;

/** What came of a change. */
final class Kept {
    private Kept() {}

    /**
     * The name of the step that was done.
     *
     * @throws CouldNot with the reason, when nothing was
     */
    static String step(Result result) {
        if (result instanceof Result.Done done) {
            return done.step();
        }
        throw new CouldNot(
                result instanceof Result.Refused refused ? refused.sentence() : ((Result.Failed) result).sentence());
    }
}
