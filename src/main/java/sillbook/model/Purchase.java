// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Bulbs bought.
 *
 * @param count bulbs, as received or as ordered
 * @param price what they cost altogether, as many as were ordered
 * @param supplier in the grower's words; may be empty
 * @param origin where they were grown, in the grower's words; may be empty
 * @param waits where they wait to be potted
 * @param cooled how long they were cooled before they came
 */
public record Purchase(
        Id<Purchase> id,
        Id<Variety> variety,
        Season season,
        Day day,
        int count,
        Grade grade,
        Optional<Money> price,
        String supplier,
        String origin,
        Arrival arrival,
        Optional<Id<Place>> waits,
        Cooled cooled,
        State state,
        String note)
        implements Entity<Purchase> {

    public Purchase {
        if (count < 1) {
            throw new IllegalArgumentException("a purchase has at least one bulb, not " + count);
        }
        if (arrival.counted() > count) {
            throw new IllegalArgumentException(
                    arrival.counted() + " bulbs were looked at, and only " + count + " came");
        }
    }

    /** Whether the bulbs are still to be ordered, on their way, here, or given up on. */
    public enum State {
        TO_ORDER,
        ORDERED,
        IN_HAND,
        REJECTED
    }

    /** The size of a bulb: as the packet prints it, as measured across, or not known. */
    public record Grade(String printed, Optional<Length> across) {
        public static final Grade UNKNOWN = new Grade("", Optional.empty());

        /** A circumference, or from one to another; what follows is no size. */
        private static final Pattern GIRTH =
                Pattern.compile("(NUM)(?: ?[/–-] ?(NUM))?(?![.,]?\\d).*".replace("NUM", "\\d{1,2}(?:[.,]\\d)?"));

        /** The circumference that is printed, in cm: of {@code 12/14} the middle, of {@code 12+} the least; empty for {@code DN I}. */
        public Optional<Double> girth() {
            Matcher said = GIRTH.matcher(printed);
            if (!said.matches()) {
                return Optional.empty();
            }
            double least = number(said.group(1));
            double most = Optional.ofNullable(said.group(2)).map(Grade::number).orElse(least);
            return Optional.of(most < least ? least : (least + most) / 2);
        }

        private static double number(String text) {
            return Double.parseDouble(text.replace(',', '.'));
        }
    }

    /** Weeks of cold the bulbs had dry, before potting; empty when nobody knows. */
    public record Cooled(Optional<Double> weeks) {
        public static final Cooled UNKNOWN = new Cooled(Optional.empty());

        public Cooled {
            weeks.ifPresent(given -> {
                if (!(given >= 0)) {
                    throw new IllegalArgumentException("weeks of cooling cannot be " + given);
                }
            });
        }
    }

    /**
     * A sum of money.
     *
     * @param minor in the currency's smallest unit
     * @param currency its three-letter code (ISO 4217), or empty for the grower's usual one
     */
    public record Money(long minor, String currency) {
        /** Added up, each currency for itself, in the order in which they come. */
        public static List<Money> sums(Collection<Money> some) {
            Map<String, Long> sums = new LinkedHashMap<>();
            some.forEach(money -> sums.merge(money.currency(), money.minor(), Long::sum));
            return sums.entrySet().stream()
                    .map(sum -> new Money(sum.getValue(), sum.getKey()))
                    .toList();
        }
    }

    /** Bulbs of which only their number is known yet. */
    public static Purchase of(Id<Purchase> id, Id<Variety> variety, Season season, Day day, int count, State state) {
        return new Purchase(
                id,
                variety,
                season,
                day,
                count,
                Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Cooled.UNKNOWN,
                state,
                "");
    }

    /** The same bulbs, come on that day: what was ordered is then what the count of those that came is held to. */
    public Purchase arrivedOn(Day cameOn) {
        Arrival beside = new Arrival(
                arrival.ordered().or(() -> Optional.of(count)),
                arrival.insteadOf(),
                arrival.firm(),
                arrival.soft(),
                arrival.mouldy(),
                arrival.note());
        return in(State.IN_HAND, cameOn, beside);
    }

    /** The same bulbs, ordered on that day. */
    public Purchase orderedOn(Day orderedOn) {
        return in(State.ORDERED, orderedOn, arrival);
    }

    /** The same bulbs, given up on. */
    public Purchase rejected() {
        return in(State.REJECTED, day, arrival);
    }

    private Purchase in(State now, Day on, Arrival cameAs) {
        return new Purchase(
                id, variety, season, on, count, grade, price, supplier, origin, cameAs, waits, cooled, now, note);
    }

    /** Bulbs that can be planted. */
    public int sound() {
        return arrival.firm().orElse(count - arrival.unsound());
    }

    /** Bulbs that its season has from it, or is to have; those that came and cannot be planted are not among them. */
    public int provides() {
        return switch (state) {
            case TO_ORDER, ORDERED -> count;
            case IN_HAND -> sound();
            case REJECTED -> 0;
        };
    }

    /** How many fewer came than were ordered. */
    public int missing() {
        return Math.max(0, ordered() - count);
    }

    /** What so many of them cost, rounded half up to the coin: however many came, the price is that of all that were ordered. */
    public Optional<Money> costOf(int bulbs) {
        return price.map(all -> new Money(Math.round((double) all.minor() * bulbs / ordered()), all.currency()));
    }

    private int ordered() {
        return arrival.ordered().orElse(count);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(Stream.of(variety), arrival.insteadOf().stream(), waits.stream())
                .flatMap(ids -> ids);
    }
}
