// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.words.Looking;

/** Slots that several forms have. */
final class Slots {
    static final Slot<List<Pot>> POTS = Slot.many("pot", PotsSense.SENSE);

    /** Bulbs that wait to be potted. */
    static final Slot<List<Purchase>> DRY_BULBS = Slot.many("", DryBulbsSense.SENSE);

    private static final NameSense<Place> PLACES = new NameSense<>(
            bench -> bench.journal().places().all(),
            Place::name,
            (place, bench) -> bench.room(place).says());

    private static final NameSense<Variety> VARIETIES = new NameSense<>(
            bench -> bench.journal().varieties().all(),
            Variety::name,
            (variety, bench) -> variety.kind().toString());

    static final Slot<Place> PLACE = Slot.one("place", PLACES);

    /** The place whose thermometer says how warm the air is. */
    static final Slot<Place> AIR =
            Slot.one("place outdoors", new LedSense<>(List.of("air from", "air as in", "air of"), PLACES));

    static final Slot<Variety> VARIETY = Slot.one("variety", VARIETIES);

    /** A place that may be new. */
    static final Slot<Named<Place>> ANY_PLACE = Slot.one("place", new NamingSense<>(PLACES, new MakingPlace()));

    /** A variety that may be new. */
    static final Slot<Named<Variety>> ANY_VARIETY =
            Slot.one("variety", new NamingSense<>(VARIETIES, new MakingVariety()));

    /** Varieties that may be new. */
    static final Slot<Named<Variety>> ANY_VARIETIES =
            Slot.many("variety", new NamingSense<>(VARIETIES, new MakingVariety()));

    static final Slot<PottingMix> MIX = Slot.one(
            "potting mix",
            new NameSense<>(bench -> bench.journal().pottingMixes().all(), PottingMix::name, (mix, bench) -> ""));

    static final Slot<Container> CONTAINER = Slot.one(
            "container",
            new NameSense<>(bench -> bench.journal().containers().all(), Container::name, (container, bench) -> ""));

    /** The day something happened. */
    static final Slot<Day> DAY = Slot.one("day", Senses.day(Looking.BACK));

    /** The day something is meant to happen. */
    static final Slot<Day> COMING_DAY = Slot.one("day", Senses.day(Looking.AHEAD));

    static final Slot<Length> LENGTH = Slot.one("length", Senses.length());

    /** Words to the end of the line. */
    static final Slot<String> NOTE = Slot.one("note", Senses.restAfter("note", "jot"));

    /** The name that follows a keyword of one word, to the end of its phrase. */
    static final Slot<String> NAME = Slot.one("name", Senses.phraseAt(1));

    /** Another name for what the line is about. */
    static final Slot<String> CALLED = Slot.one("", Senses.phraseAfter("called", "renamed"));

    static final Slot<Kind> KIND = Slot.one("kind", KindSense.SENSE);

    /** A phrase that nothing else makes sense of. */
    static final Slot<String> FREE = Slot.one("", FreePhrase.SENSE);

    private Slots() {}

    /** All pots named, once each. */
    static List<Pot> pots(Filled filled) {
        return filled.all(POTS).stream().flatMap(List::stream).distinct().toList();
    }

    /** The day written, or today. */
    static Day day(Filled filled, Bench bench) {
        return filled.get(DAY).orElseGet(() -> Day.on(bench.today()));
    }
}
