// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.function.Function;

/**
 * Why a change cannot be; nothing was altered.
 *
 * @param sentence what, where, and what to do instead
 */
public record Refusal(String sentence) implements Decision {
    @Override
    public <R> R fold(Function<Step, R> step, Function<Refusal, R> refusal) {
        return refusal.apply(this);
    }
}
