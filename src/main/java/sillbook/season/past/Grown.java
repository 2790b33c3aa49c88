// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Outcome.Again;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Season;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Bloom;
import sillbook.season.ColdCount;

/**
 * A variety in a pot in one winter, and how it did: what winters are compared by. A mixed pot is one for each variety in
 * it, a plant that lives on one for each of its winters.
 *
 * @param isTold whether it was written where it stood, in the cold or out of it
 * @param coldAt where it stood longest in the cold; empty where it had none, or nobody wrote the place
 * @param daysOfCold in the cold, as written, whatever the place was like
 * @param cold what of it counted, by thermometers where they were read
 * @param bloom of the variety where it was written, else of the pot
 * @param inBloom the days in flower of the pot so far
 * @param hasFailed whether the pot ended as failed
 * @param outcome of the variety where it was judged by itself, else of the pot
 */
public record Grown(
        Pot pot,
        Planting planting,
        Season winter,
        boolean isTold,
        Optional<Id<Place>> coldAt,
        long daysOfCold,
        ColdCount cold,
        Bloom.Points bloom,
        List<DaySpan> inBloom,
        boolean hasFailed,
        Optional<Outcome> outcome) {
    public Grown {
        inBloom = List.copyOf(inBloom);
    }

    /** How good it was, in one word. */
    public enum Rating {
        WELL,
        FAIR,
        FAILED
    }

    /** Whether a flower was written, of whatever point of its bloom. */
    public boolean hasFlowered() {
        return !bloom.equals(Bloom.Points.NONE);
    }

    public Optional<Integer> score() {
        return outcome.flatMap(Outcome::score);
    }

    /** Well at 4 or 5, fair at 3; failed below, or where the pot failed and has no score. Empty while nobody judged it. */
    public Optional<Rating> rating() {
        return score().map(Grown::rating).or(() -> hasFailed ? Optional.of(Rating.FAILED) : Optional.empty());
    }

    private static Rating rating(int score) {
        if (score >= 4) {
            return Rating.WELL;
        }
        return score == 3 ? Rating.FAIR : Rating.FAILED;
    }

    /** Whether the grower would do it again, as far as that was said. */
    public Optional<Again> again() {
        return outcome.map(Outcome::again).filter(said -> said != Again.NOT_SAID);
    }

    public Optional<String> note() {
        return outcome.map(Outcome::note).filter(note -> !note.isEmpty());
    }
}
