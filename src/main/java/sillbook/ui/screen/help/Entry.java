// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.help;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.text.Fold;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer.Reach;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;

/**
 * One line of help: an action, or actions told in one breath.
 *
 * @param keys as written before it
 * @param says what they do
 * @param offers the actions behind it that are offered here; the first is the one Enter does
 * @param elsewhere where it can be done, when that is not here: {@code on Pots}; else empty
 */
record Entry(String keys, String says, List<Offer> offers, String elsewhere) {
    static final Entry NONE = new Entry("", "", List.of(), "");

    Entry {
        offers = List.copyOf(offers);
    }

    /**
     * Offers as lines, those with the same words of help drawn together; with the keys that do them, not those that are
     * text here or do something else.
     */
    static List<Entry> of(List<Offer> offers, State beneath) {
        List<Entry> entries = new ArrayList<>();
        for (Offer offer : offers) {
            String keys = offer.action().keysShown(key -> does(key, offer, beneath));
            Optional<Entry> before = last(entries)
                    .filter(entry -> entry.says.equals(offer.action().help()));
            before.ifPresent(entries::remove);
            if (!keys.isEmpty()) {
                entries.add(before.map(entry -> entry.with(keys, offer))
                        .orElseGet(() -> new Entry(keys, offer.action().help(), List.of(offer), "")));
            }
        }
        return entries;
    }

    private static boolean does(Key key, Offer offer, State beneath) {
        boolean isText = beneath.top().reach() == Reach.FIELD && key instanceof Key.Typed;
        return !isText
                && Offer.find(beneath.offers(), key)
                        .filter(found -> found.action() == offer.action())
                        .isPresent();
    }

    /** One action by itself, whether it is offered here or not. */
    static Entry of(Action action, Optional<Offer> offer) {
        String elsewhere = offer.isPresent() ? "" : action.where().place();
        return new Entry(action.keysShown(false), action.words(), offer.stream().toList(), elsewhere);
    }

    private static Optional<Entry> last(List<Entry> entries) {
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1));
    }

    private Entry with(String moreKeys, Offer offer) {
        List<Offer> more = new ArrayList<>(offers);
        more.add(offer);
        return new Entry(keys + " " + moreKeys, says, more, elsewhere);
    }

    boolean isOn() {
        return offers.stream().anyMatch(Offer::isOn);
    }

    /** The reasons why it is off, each with its key: {@code R (nothing was taken back)}. */
    String reasons() {
        if (!elsewhere.isEmpty()) {
            return keys + " (" + says + ": only " + elsewhere + ")";
        }
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
