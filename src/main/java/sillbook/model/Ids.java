// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** A source of new ids. The program draws them at random; tests count. */
@FunctionalInterface
public interface Ids {
    /** One half of an id. */
    long half();

    /** A new id, given to nothing before. */
    default <T> Id<T> next() {
        return new Id<>(half(), half());
    }
}
