// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Variety;

/**
 * What a plan takes, and what of it is still to be had.
 *
 * @param bulbs by supplier, then by variety
 * @param leftOver bulbs of the season's purchases that are in no pot of the plan
 * @param mix empty where no container of the plan has a known size
 * @param labels one for each pot that is to be made
 */
public record Supplies(
        List<Bulbs> bulbs, List<Leftover> leftOver, List<Pots> containers, Optional<Mix> mix, int labels) {
    /** From an order to the day the bulbs are here (common practice). */
    public static final int DELIVERY_DAYS = 14;

    public Supplies {
        bulbs = List.copyOf(bulbs);
        leftOver = List.copyOf(leftOver);
        containers = List.copyOf(containers);
    }

    /** Where bulbs are. */
    public enum State {
        /** They stand on no list yet. */
        TO_BUY,
        TO_ORDER,
        ORDERED,
        IN_HAND,
        /** They came, and some cannot be planted, or they were given up on. */
        SHORT
    }

    /**
     * Bulbs of one variety.
     *
     * @param supplier as it was last bought; empty where nobody said
     * @param grade as the packet prints it; empty where it is not known
     * @param purchase where they are from, if from one
     * @param bulbs the plan takes
     * @param pots they fill
     * @param wanting of them, how many are still to be ordered
     * @param cost of those, at the last price; empty where there is none
     * @param potBy the first day one of these pots is potted
     * @param orderBy the day by which they are to be ordered for that
     */
    public record Bulbs(
            String supplier,
            Id<Variety> variety,
            String grade,
            Optional<Id<Purchase>> purchase,
            State state,
            int bulbs,
            int pots,
            int wanting,
            Optional<Money> cost,
            LocalDate potBy,
            LocalDate orderBy) {}

    /** Bulbs of a purchase that no pot of the plan takes. */
    public record Leftover(Id<Purchase> purchase, Id<Variety> variety, int bulbs) {}

    /**
     * Containers of one sort.
     *
     * @param needed by pots that are to be made; 0 of those that are free where of others too few are
     * @param free in stock and not in use by other pots that are growing
     * @param unwashed of the free ones
     */
    public record Pots(Id<Container> container, int needed, int free, int unwashed) {
        public int toBuy() {
            return Math.max(0, needed - free);
        }

        /** Of those that are needed, how many have to be washed first. */
        public int toWash() {
            return Math.max(0, Math.min(needed, free) - (free - unwashed));
        }
    }

    /**
     * Potting mix.
     *
     * @param litres loose, so that the pots are full once it has settled
     * @param mix what it is put together of, where the grower has one
     * @param parts litres of each of its parts, loose
     * @param withoutSize pots for which nothing could be reckoned
     */
    public record Mix(double litres, Optional<Id<PottingMix>> mix, List<Double> parts, int withoutSize) {
        public Mix {
            parts = List.copyOf(parts);
        }
    }

    /** What all that is still to be ordered costs, one sum for each currency; what has no price is not in it. */
    public List<Money> cost() {
        return Money.sums(bulbs.stream().flatMap(one -> one.cost().stream()).toList());
    }

    /** How many sorts are to be ordered of which no price is known. */
    public int withoutPrice() {
        return (int) bulbs.stream()
                .filter(one -> one.wanting() > 0 && one.cost().isEmpty())
                .count();
    }

    /** Bulbs still to be ordered. */
    public int wanting() {
        return bulbs.stream().mapToInt(Bulbs::wanting).sum();
    }
}
