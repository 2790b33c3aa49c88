// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** How much may still be looked at, in ways weighed; and whether anybody wants it to end. No clock is read, so that the same task gives the same plan. */
final class Effort {
    private static final int BETWEEN_LOOKS = 20_000;

    private final Watch watch;
    private final long most;
    private long spent;
    private long nextLook;
    private boolean stopped;

    Effort(long most, Watch watch) {
        this.most = most;
        this.watch = watch;
    }

    void spend(long ways) {
        spent += ways;
        if (spent >= nextLook) {
            nextLook = spent + BETWEEN_LOOKS;
            stopped = stopped || watch.wantsStop();
            watch.spent(Math.min(1, (double) spent / most));
        }
    }

    /** Whether to end, where a part of the whole, 0 to 1, may be spent. */
    boolean isSpent(double part) {
        return stopped || spent >= part * most;
    }
}
