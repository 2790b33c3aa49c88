// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

/** Is told from time to time how far a delivery is. */
@FunctionalInterface
public interface Progress {
    Progress UNWATCHED = soFar -> true;

    /** Whether to go on; when not, nothing of the delivery stays. It is asked one last time when all is gone through. */
    boolean goesOn(Comparison soFar);
}
