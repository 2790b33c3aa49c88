// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Wish;
import sillbook.reckon.dates.Judgement;

/**
 * A wish that a pot is meant to meet, and how that stands.
 *
 * @param share the bulbs it is for
 * @param on the day its next stage should begin for the wish
 * @param by the last day on which that still makes it with the usual lengths; empty when no step of it is left
 * @param judgement of the wish if the next stage begins on its likely day
 */
public record WishNow(
        Wish wish,
        Prospect.Share share,
        Optional<LocalDate> on,
        Optional<LocalDate> by,
        Optional<Judgement> judgement) {}
