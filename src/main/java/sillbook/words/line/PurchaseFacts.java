// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Length;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Cooled;
import sillbook.model.Purchase.Grade;
import sillbook.model.Purchase.Money;
import sillbook.model.Variety;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Prices;
import sillbook.words.Weeks;

/** What a line says of bulbs bought. */
record PurchaseFacts(Filled filled) {
    static final Slot<Integer> COUNT = Slot.one("number of bulbs", new BulbCountSense());

    private static final Slot<String> GRADE =
            Slot.one("", Senses.phraseAfter("grade", "size").map(PurchaseFacts::printed));
    private static final Slot<Length> ACROSS = Slot.one("", Senses.longest((words, bench) -> across(words)));
    private static final Slot<Money> PRICE = Slot.one("price", Senses.longest((words, bench) -> price(words)));
    private static final Slot<String> SUPPLIER = Slot.one("", Senses.phraseAfter("from"));
    private static final Slot<String> ORIGIN = Slot.one("", Senses.phraseAfter("grown in", "origin"));
    private static final Slot<Cooled> COOLED = Slot.one("", Senses.longest((words, bench) -> cooled(words)));

    static final List<Slot<?>> SLOTS = Stream.of(
                    List.of(PRICE, COUNT, Slots.ANY_VARIETY, Slots.ANY_PLACE, GRADE, ACROSS, SUPPLIER, ORIGIN, COOLED),
                    ArrivalFacts.SLOTS,
                    List.of(Slots.DAY, Slots.NOTE, Slots.FREE))
            .<Slot<?>>flatMap(List::stream)
            .toList();

    private static String printed(String grade) {
        return Fold.of(grade).matches("unknown|not known|\\?") ? "" : grade;
    }

    private static Optional<Heard<Length>> across(String words) {
        String said = Fold.of(words);
        String length = said.endsWith(" across") ? words.substring(0, words.length() - " across".length()) : words;
        return Lengths.isSure(length) ? Optional.of(Lengths.parse(length)) : Optional.empty();
    }

    /** A price has decimals, a currency, or a word that leads to it; a bare number is a count. */
    private static Optional<Heard<Money>> price(String words) {
        String said = Fold.of(words);
        for (String lead : List.of("price ", "for ", "cost ", "costs ")) {
            if (said.startsWith(lead)) {
                return Optional.of(Prices.parse(words.substring(lead.length())));
            }
        }
        Heard<Money> price = Prices.parse(words);
        boolean sure = said.matches(".*\\d[.,]\\d.*|.*[€£$].*|[a-z]{3} ?\\d+|\\d+ ?(?:eur|gbp|usd|chf|[a-z]{3})");
        return sure && (price.value().isPresent() || said.contains("$")) ? Optional.of(price) : Optional.empty();
    }

    private static Optional<Heard<Cooled>> cooled(String words) {
        String said = Fold.of(words);
        if (said.equals("not cooled") || said.equals("cooled 0")) {
            return Optional.of(Heard.as(new Cooled(Optional.of(0.0))));
        }
        if (said.matches("cooled (?:unknown|\\?)|cooling unknown")) {
            return Optional.of(Heard.as(Cooled.UNKNOWN));
        }
        return said.startsWith("cooled ")
                ? Optional.of(
                        Weeks.parse(words.substring("cooled ".length())).map(weeks -> new Cooled(Optional.of(weeks))))
                : Optional.empty();
    }

    /** The variety that came. */
    Optional<Named<Variety>> variety() {
        return filled.get(ArrivalFacts.SENT).or(() -> filled.get(Slots.ANY_VARIETY));
    }

    /** The purchase with what is written put over what it was. */
    Purchase over(Purchase before) {
        ArrivalFacts arrival = new ArrivalFacts(filled);
        return new Purchase(
                before.id(),
                variety().map(named -> named.thing().id()).orElse(before.variety()),
                before.season(),
                filled.get(Slots.DAY).orElse(before.day()),
                arrival.count(before),
                new Grade(
                        filled.get(GRADE).orElse(before.grade().printed()),
                        filled.get(ACROSS).or(before.grade()::across)),
                filled.get(PRICE).or(before::price),
                filled.get(SUPPLIER).orElse(before.supplier()),
                filled.get(ORIGIN).orElse(before.origin()),
                arrival.over(before),
                filled.get(Slots.ANY_PLACE).map(place -> place.thing().id()).or(before::waits),
                filled.get(COOLED).orElse(before.cooled()),
                before.state(),
                filled.get(Slots.NOTE).orElse(before.note()));
    }

    /**
     * Reads back what is written of a purchase.
     *
     * @param what what happened on its day: {@code bought}
     */
    void say(String what, Purchase purchase, Draft draft) {
        Lines.happened(what, purchase.day(), draft);
        filled.get(GRADE).ifPresent(grade -> draft.means(grade.isEmpty() ? "grade not known" : "grade " + grade));
        filled.get(ACROSS)
                .ifPresent(across -> draft.means(
                        Lengths.say(across, draft.bench().journal().settings().lengths()) + " across"));
        filled.get(PRICE).ifPresent(price -> draft.means("price: " + Prices.say(price)));
        filled.get(SUPPLIER).ifPresent(supplier -> draft.means("from " + supplier));
        filled.get(ORIGIN).ifPresent(origin -> draft.means("grown in " + origin));
        new ArrivalFacts(filled).say(purchase, draft);
        filled.get(COOLED).ifPresent(cooled -> draft.means(said(cooled)));
        filled.get(Slots.ANY_PLACE)
                .ifPresent(
                        place -> draft.means("waiting in the " + place.thing().name()));
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
    }

    private static String said(Cooled cooled) {
        return cooled.weeks()
                .map(weeks -> weeks == 0 ? "not cooled before" : "cooled " + Weeks.say(weeks) + " before")
                .orElse("nobody knows how long they were cooled");
    }
}
