// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.help;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.text.Fold;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;

/**
 * One line of help: an action, or actions told in one breath.
 *
 * @param keys as written before it
 * @param says what they do
 * @param offers the actions behind it that are offered here; the first is the one Enter does
 */
record Entry(String keys, String says, List<Offer> offers) {

    Entry {
        offers = List.copyOf(offers);
    }

    /** Offers as lines, those with the same words of help drawn together. */
    static List<Entry> of(List<Offer> offers, boolean lettersAreText) {
        List<Entry> entries = new ArrayList<>();
        for (Offer offer : offers) {
            String keys = offer.action().keysShown(lettersAreText);
            Optional<Entry> before = last(entries)
                    .filter(entry -> entry.says.equals(offer.action().help()));
            before.ifPresent(entries::remove);
            if (!keys.isEmpty()) {
                entries.add(before.map(entry -> entry.with(keys, offer))
                        .orElseGet(() -> new Entry(keys, offer.action().help(), List.of(offer))));
            }
        }
        return entries;
    }

    /** One action by itself, whether it is offered here or not. */
    static Entry of(Action action, Optional<Offer> offer) {
        return new Entry(action.keysShown(false), action.words(), offer.stream().toList());
    }

    private static Optional<Entry> last(List<Entry> entries) {
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
    }

    private Entry with(String moreKeys, Offer offer) {
        List<Offer> more = new ArrayList<>(offers);
        more.add(offer);
        return new Entry(keys + " " + moreKeys, says, more);
    }

    boolean isOn() {
        return offers.stream().anyMatch(Offer::isOn);
    }

    /** The reasons why it is off, each with its key: {@code R (nothing was taken back)}. */
    String reasons() {
        return offers.stream()
                .filter(offer -> !offer.isOn())
                .map(offer ->
                        offer.action().keysShown(false) + " (" + offer.off().orElse("") + ")")
                .collect(joining(", "));
    }

    static boolean matches(Action action, String sought) {
        String all =
                String.join(" ", action.words(), action.help(), action.where().heading());
        return Fold.contains(all, sought) || action.keysShown(false).equalsIgnoreCase(sought);
    }
}
