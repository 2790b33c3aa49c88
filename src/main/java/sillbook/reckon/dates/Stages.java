// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.util.Optional;

/**
 * When each stage of a pot starts.
 *
 * @param cold empty for a kind that needs none
 * @param coolRoom empty where none is used
 * @param afterBloom empty when nobody knows how long the flowers last
 */
public record Stages(
        Optional<Window> cold, Optional<Window> coolRoom, Window warmRoom, Window bloom, Optional<Window> afterBloom) {

    public Optional<Window> at(Milestone milestone) {
        return switch (milestone) {
            case COLD -> cold;
            case COOL_ROOM -> coolRoom;
            case WARM_ROOM -> Optional.of(warmRoom);
            case BLOOM -> Optional.of(bloom);
            case AFTER_BLOOM -> afterBloom;
        };
    }

    /** When the pot leaves the cold: for the cool room, or for the warm one where no cool room is used. */
    public Window broughtOut() {
        return coolRoom.orElse(warmRoom);
    }

    /** The likely days of a stage; empty when it is left out, or its end is not known. */
    public Optional<DaySpan> likelySpan(Milestone milestone) {
        Optional<Window> next = Optional.empty();
        for (Milestone later : Milestone.values()) {
            if (next.isEmpty() && later.compareTo(milestone) > 0) {
                next = at(later);
            }
        }
        Optional<Window> end = next;
        return at(milestone).flatMap(start -> end.map(after -> DaySpan.of(start.likely(), after.likely())));
    }
}
