// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.function.Function;

/** What a change comes to. */
public sealed interface Decision permits Step, Refusal {
    <R> R fold(Function<Step, R> step, Function<Refusal, R> refusal);
}
