// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How a pot did, or one variety in a mixed one.
 *
 * @param score 1 to 5
 * @param flowers how many of the bulbs flowered
 * @param failure what was found to be wrong
 * @param impression what it was like to live with
 * @param note in the grower's words; may be empty
 */
public record Outcome(
        Id<Outcome> id,
        Id<Pot> pot,
        Optional<Id<Variety>> variety,
        Day day,
        Optional<Integer> score,
        Optional<Integer> flowers,
        Optional<Length> height,
        Optional<LocalDate> firstGood,
        Optional<LocalDate> lastGood,
        Failure failure,
        Impression impression,
        String note)
        implements Entity<Outcome> {

    public Outcome {
        score.ifPresent(given -> {
            if (given < 1 || given > 5) {
                throw new IllegalArgumentException("a score is 1 to 5, not " + given);
            }
        });
    }

    /** Whether the grower would do it again. */
    public enum Again {
        NOT_SAID,
        YES,
        NO,
        DIFFERENTLY
    }

    /** One of which nothing is said yet, of a whole pot or of a variety in it. */
    public static Outcome notJudged(Id<Outcome> id, Id<Pot> pot, Optional<Id<Variety>> variety, Day day) {
        return new Outcome(
                id,
                pot,
                variety,
                day,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Failure.NONE,
                Impression.NONE,
                "");
    }

    /** Whether the grower would do it again. */
    public Again again() {
        return impression.again();
    }

    /** Whether it says how good it was, or what went wrong; how tall it grew alone does not. */
    public boolean isJudgement() {
        return score.isPresent() || !failure.equals(Failure.NONE);
    }

    /** What of a pot some outcomes judge: the varieties, or the pot as a whole, which is empty. */
    public static Set<Optional<Id<Variety>>> judged(Collection<Outcome> written) {
        return written.stream()
                .filter(Outcome::isJudgement)
                .map(Outcome::variety)
                .collect(Collectors.toUnmodifiableSet());
    }

    public Outcome withScore(int given) {
        return new Outcome(
                id,
                pot,
                variety,
                day,
                Optional.of(given),
                flowers,
                height,
                firstGood,
                lastGood,
                failure,
                impression,
                note);
    }

    public Outcome withFailure(Failure found) {
        return new Outcome(id, pot, variety, day, score, flowers, height, firstGood, lastGood, found, impression, note);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(Stream.of(pot), variety.stream());
    }
}
