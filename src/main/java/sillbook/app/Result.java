// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import sillbook.model.Journal;

/** What came of doing something to the journal. */
public sealed interface Result {

    /**
     * It is done and kept.
     *
     * @param step the name of the step done, taken back or put back
     * @param journal the journal by now
     */
    record Done(String step, Journal journal) implements Result {}

    /** It cannot be; nothing was changed. */
    record Refused(String sentence) implements Result {}

    /** It could be, but the file would not take it; nothing was changed. */
    record Failed(String sentence) implements Result {}
}
