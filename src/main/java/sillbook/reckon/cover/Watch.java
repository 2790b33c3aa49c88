// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** Looks on while a plan is sought. Both are called on the thread that seeks, often and in quick succession. */
public interface Watch {
    /** Lets the search take its course. */
    Watch PATIENT = new Watch() {
        @Override
        public boolean wantsStop() {
            return false;
        }

        @Override
        public void found(Plan best) {
            // Nobody looks.
        }
    };

    /** Whether the best so far will do; asked about every millisecond. */
    boolean wantsStop();

    /** A better plan was found, or it was proven that there is none better at a goal. */
    void found(Plan best);
}
