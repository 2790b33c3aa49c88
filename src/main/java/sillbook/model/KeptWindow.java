// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;

/**
 * When a stage was expected to begin, as it was shown on the day it was made. It is never revised, so that the book can
 * later be held to its word.
 *
 * @param basis what it rested on, in a few words
 */
public record KeptWindow(
        Id<Pot> pot,
        Stage stage,
        LocalDate madeOn,
        LocalDate earliest,
        LocalDate likely,
        LocalDate latest,
        String basis) {}
