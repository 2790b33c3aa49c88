// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** The part of an effort, 0 to 1, that something may bring it to. */
record Allowance(Effort effort, double part) {
    void spend(long ways) {
        effort.spend(ways);
    }

    boolean isSpent() {
        return effort.isSpent(part);
    }
}
