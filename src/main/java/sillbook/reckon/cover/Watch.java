// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/**
 * Looks on while a plan is sought. All are called on the thread that seeks, often and in quick succession; what is handed over does not change any more, and may go to another thread. A search can be stopped from another
 * thread by what {@link #wantsStop} looks at.
 */
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

    /** How much of the effort is spent, 0 to 1; told as often as is asked above. */
    default void spent(double part) {}

    /** A better plan was found, or it was proven that there is none better at a goal. */
    void found(Plan best);
}
