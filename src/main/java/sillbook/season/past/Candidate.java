// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.model.Choice;
import sillbook.model.Purchase.Money;
import sillbook.model.Variety;

/**
 * A variety that could be grown in the coming season.
 *
 * @param choice its mark for that season
 * @param before its last mark for an earlier one
 * @param scores one of each time a pot of it was scored, the oldest first
 * @param inHand bulbs of this season that are in no pot
 * @param onOrder bulbs of the coming season that are to order or ordered
 * @param toOrder of the bulbs that are chosen, those that are neither in hand for the coming season nor on order
 * @param each what a bulb of it cost when it was last bought; empty where no price was written
 * @param reasons the weightiest first
 */
public record Candidate(
        Variety variety,
        Optional<Choice> choice,
        Optional<Choice> before,
        List<Integer> scores,
        int inHand,
        int onOrder,
        int toOrder,
        Optional<Money> each,
        List<Reason> reasons) {
    public Candidate {
        scores = List.copyOf(scores);
        reasons = List.copyOf(reasons);
    }

    /** Of all its scores alike; empty when there is none. */
    public OptionalDouble mean() {
        return scores.stream().mapToInt(score -> score).average();
    }

    /** How many bulbs are chosen; empty where it is not. */
    public Optional<Integer> chosen() {
        return choice.flatMap(Choice::bulbs);
    }

    /** The mark that holds: its own for that season, else an earlier one by which it was set aside. */
    public Optional<Choice> holding() {
        return choice.or(() -> before.filter(Choice::isSetAside));
    }

    /** Whether it is set aside, by a mark of this season or by one of an earlier season that still stands. */
    public boolean isSetAside() {
        return holding().filter(Choice::isSetAside).isPresent();
    }
}
