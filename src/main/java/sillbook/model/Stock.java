// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The bulbs of one variety that a season has in hand; soft and mouldy ones are not among them.
 *
 * @param purchases those that have come, the oldest first
 */
public record Stock(Journal journal, List<Purchase> purchases) {
    public Stock {
        purchases = List.copyOf(purchases);
    }

    public static Stock of(Id<Variety> variety, Season season, Journal journal) {
        return new Stock(
                journal,
                journal.purchases().all().stream()
                        .filter(purchase -> purchase.variety().equals(variety))
                        .filter(purchase -> purchase.season().equals(season))
                        .filter(purchase -> purchase.state() == Purchase.State.IN_HAND)
                        .sorted(Comparator.comparing(Purchase::day))
                        .toList());
    }

    /** Bulbs bought and in no pot; a pot that waits for its potting day has its bulbs already. */
    public int inHand() {
        return purchases.stream().mapToInt(this::left).sum();
    }

    /** Bulbs bought and in no potted pot; those of pots that wait for their potting day are among them. */
    public int unpotted() {
        return purchases.stream()
                .mapToInt(purchase -> left(purchase, journal, pot -> journal.isPotted(pot.id())))
                .sum();
    }

    /** The purchase to take so many bulbs from: the oldest that has them all, else the one that has most. */
    public Optional<Purchase> source(int bulbs) {
        return purchases.stream()
                .filter(purchase -> left(purchase) >= bulbs)
                .findFirst()
                .or(() -> purchases.stream()
                        .filter(purchase -> left(purchase) > 0)
                        .max(Comparator.comparingInt(this::left)));
    }

    private int left(Purchase purchase) {
        return left(purchase, journal);
    }

    /** Bulbs that a purchase gives or is to give, and that no pot has yet. */
    public static int unplanted(Purchase purchase, Journal journal) {
        return Math.max(0, purchase.provides() - planted(purchase, journal, any -> true));
    }

    /** Bulbs of a purchase that are in no pot. */
    public static int left(Purchase purchase, Journal journal) {
        return left(purchase, journal, any -> true);
    }

    private static int left(Purchase purchase, Journal journal, Predicate<Pot> which) {
        return Math.max(0, purchase.sound() - planted(purchase, journal, which));
    }

    private static int planted(Purchase purchase, Journal journal, Predicate<Pot> which) {
        return journal.pots().all().stream()
                .filter(pot -> pot.bulbsFrom(purchase.id()) > 0 && which.test(pot))
                .mapToInt(pot -> pot.bulbsFrom(purchase.id()))
                .sum();
    }
}
