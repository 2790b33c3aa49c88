// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.Optional;
import java.util.function.Supplier;

/** Something worked out when first asked for, once, whoever asks. */
final class Lazy<T> implements Supplier<T> {
    private final Supplier<T> source;
    private Optional<T> value = Optional.empty();

    private Lazy(Supplier<T> source) {
        this.source = source;
    }

    static <T> Lazy<T> of(Supplier<T> source) {
        return new Lazy<>(source);
    }

    @Override
    public synchronized T get() {
        if (value.isEmpty()) {
            value = Optional.of(source.get());
        }
        return value.orElseThrow();
    }
}
