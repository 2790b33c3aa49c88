// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import sillbook.model.Wish;

/** The day by which a job must be done, and for what. After it the pot is late. */
public sealed interface Deadline {

    /** One answer for each case. */
    interface Cases<R> {
        R useBy(UseBy deadline);

        R forWish(ForWish deadline);
    }

    <R> R fold(Cases<R> cases);

    /** The last good day. */
    LocalDate day();

    /** Waiting longer in the cold harms the pot. */
    record UseBy(LocalDate day) implements Deadline {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.useBy(this);
        }
    }

    /** After this day the usual lengths no longer bring it to flower for its wish. */
    record ForWish(LocalDate day, Wish wish) implements Deadline {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.forWish(this);
        }
    }
}
