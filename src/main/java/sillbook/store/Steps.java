// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.time.Instant;
import java.util.List;

/**
 * A stretch of the journal's steps, the newest first. Those taken back stand before all others.
 *
 * @param all how many the journal has, those taken back among them
 * @param takenBack how many of these are taken back
 */
public record Steps(List<Listed> stretch, int all, int takenBack) {
    public Steps {
        stretch = List.copyOf(stretch);
    }

    /** One step in the list. */
    public record Listed(String name, Instant writtenAt, boolean isTakenBack) {}
}
