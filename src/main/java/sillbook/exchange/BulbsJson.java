// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Variety;
import sillbook.model.Variety.BloomSeason;
import sillbook.model.Variety.ForPots;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;
import sillbook.reckon.effects.Interval;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Outlook;
import sillbook.season.Suiting;
import sillbook.season.VarietyNow;
import sillbook.season.past.ColdTried;
import sillbook.season.past.VarietyWinter;
import sillbook.season.past.Winters;
import sillbook.words.Prices;
import sillbook.words.SuitingWords;
import sillbook.words.Terms;

/** Varieties and purchases as JSON. */
public final class BulbsJson {
    private final Named named;
    private final Outlook outlook;
    private final Winters winters;
    private final SuitingWords words;

    private BulbsJson(Journal journal, Outlook outlook) {
        this.named = new Named(journal);
        this.outlook = outlook;
        this.winters = Winters.of(journal, outlook.day());
        this.words = new SuitingWords(Handbook.standard(), journal.settings());
    }

    /** The document of {@code sillbook bulbs --json}. */
    public static String write(Journal journal, Outlook outlook, List<VarietyNow> varieties, List<Purchase> purchases) {
        BulbsJson json = new BulbsJson(journal, outlook);
        return Answer.write(
                new Fields().list("varieties", varieties, json::variety).list("purchases", purchases, json::purchase));
    }

    private Fields variety(VarietyNow now) {
        Variety variety = now.variety();
        Suiting suiting = outlook.suiting(variety);
        return new Fields()
                .text("variety", variety.name())
                .text("kind", variety.kind().toString())
                .written("soldAs", variety.packetName())
                .decimal("heightCm", variety.height().map(Length::centimetres))
                .text(
                        "bloomSeason",
                        unless(BloomSeason.NOT_SAID, variety.bloomSeason()).map(Terms.BLOOM_SEASONS::say))
                .written("colour", variety.colour())
                .text("scent", unless(Scent.NOT_SAID, variety.scent()).map(Terms.SCENTS::say))
                .text(
                        "packetForcing",
                        unless(PacketForcing.NOT_STATED, variety.packetForcing())
                                .map(Terms.PACKETS::say))
                .text("ownMark", unless(ForPots.NOT_MARKED, variety.forPots()).map(Terms.FOR_POTS::say))
                .text("inPots", SuitingWords.STANDINGS.say(suiting.standing()))
                .text("inPotsBecause", words.why(variety, suiting))
                .written("note", variety.note())
                .number("inHand", now.inHand())
                .number("potsScored", now.pots())
                .decimal("meanScore", mean(now.mean()))
                .list("winters", winters.winterByWinter(variety.id()), this::winter)
                .list("coldTried", winters.coldTried(variety.id()), BulbsJson::tried);
    }

    private static <E extends Enum<E>> Optional<E> unless(E nothing, E word) {
        return Optional.of(word).filter(one -> one != nothing);
    }

    private static Fields tried(ColdTried tried) {
        Interval range = tried.well().interval(StandingsJson.CHANCE).orElseThrow();
        return new Fields()
                .number("weeks", tried.weeks())
                .number("judged", tried.well().of())
                .number("well", tried.well().hits())
                .number("low", range.low())
                .number("high", range.high())
                .number("shortAndStuck", tried.shortStems())
                .number("read", tried.read());
    }

    private Fields winter(VarietyWinter winter) {
        Optional<Proportion> counted = Optional.of(winter.bulbs()).filter(bulbs -> bulbs.of() > 0);
        return new Fields()
                .text("season", named.season(winter.winter()))
                .number("pots", winter.pots())
                .numbers("scores", winter.scores())
                .decimal("meanScore", mean(winter.mean()))
                .whole("flowered", counted.map(Proportion::hits))
                .whole("planted", counted.map(Proportion::of))
                .texts(
                        "coldAt",
                        winter.grown().stream()
                                .flatMap(one -> one.coldAt().stream())
                                .distinct()
                                .map(named::place)
                                .toList())
                .text("noted", winter.noted());
    }

    private Fields purchase(Purchase purchase) {
        return new Fields()
                .text("variety", named.variety(purchase.variety()))
                .text("season", named.season(purchase.season()))
                .happened("day", purchase.day())
                .number("bulbs", purchase.count())
                .whole("ordered", purchase.arrival().ordered())
                .text("insteadOf", purchase.arrival().insteadOf().map(named::variety))
                .whole("firm", purchase.arrival().firm())
                .whole("soft", purchase.arrival().soft())
                .whole("mouldy", purchase.arrival().mouldy())
                .number("toPlant", purchase.sound())
                .text("state", Terms.STATES.say(purchase.state()))
                .written("gradePrinted", purchase.grade().printed())
                .decimal("gradeAcrossCm", purchase.grade().across().map(Length::centimetres))
                .object("price", purchase.price(), BulbsJson::price)
                .written("supplier", purchase.supplier())
                .written("origin", purchase.origin())
                .written("arrival", purchase.arrival().note())
                .text("waits", named.place(purchase.waits()))
                .decimal("cooledWeeks", purchase.cooled().weeks())
                .written("note", purchase.note());
    }

    /** Without a currency's code it is the grower's usual one. */
    private static Fields price(Money price) {
        return new Fields().number("sum", Prices.amount(price).doubleValue()).written("currency", price.currency());
    }

    private static Optional<Double> mean(OptionalDouble mean) {
        return mean.isPresent() ? Optional.of(mean.getAsDouble()) : Optional.empty();
    }
}
