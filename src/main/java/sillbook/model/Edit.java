// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** The smallest change of a journal: one entity put or removed. */
public sealed interface Edit {
    /** The entity is new, or takes the place of the one with its id. */
    record Put(Entity<?> entity) implements Edit {}

    /** The entity goes; only the fact that it was there stays. */
    record Remove(Entity<?> entity) implements Edit {}

    Entity<?> entity();
}
