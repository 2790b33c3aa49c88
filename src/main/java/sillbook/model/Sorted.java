// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/** Sets that are always gone through in the same order, so that what is said of them is the same at every start. */
final class Sorted {
    private Sorted() {}

    static <E extends Comparable<? super E>> Set<E> copyOf(Collection<E> elements) {
        return Collections.unmodifiableSet(new TreeSet<>(elements));
    }
}
