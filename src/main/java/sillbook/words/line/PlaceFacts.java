// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.text.Fold;
import sillbook.words.ColdDayWords;
import sillbook.words.Counts;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.PlaceTerms;
import sillbook.words.Spells;
import sillbook.words.Temperatures;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;

/** What a line says of a place. */
record PlaceFacts(Filled filled) {
    static final Slot<Sort> SORT = Slot.one("sort of place", Senses.oneOf(PlaceTerms.SORTS));
    private static final Vocabulary<Stage> SERVED =
            Terms.STAGES.only(Set.of(Stage.COLD, Stage.COOL_ROOM, Stage.WARM_ROOM));
    static final Slot<Stage> SERVES =
            Slot.one("stage", Senses.any(List.of(Senses.oneOf(SERVED), Senses.oneOf("serves", SERVED))));

    private static final Slot<Integer> ROOM = Slot.one("", Senses.number("room (?:for )?(\\d{1,4})(?: pots)?"));
    private static final Slot<Integer> CHECK = Slot.one(
            "",
            Senses.matching(
                    "check(?:ed)? (?:every )?(\\d{1,3})(?: days)?|never check(?:ed)?|no checks?",
                    said -> Heard.as(said.has(1) ? said.number(1) : 0)));
    private static final Slot<Duration> BRIDGES = Slot.one(
            "",
            Senses.matching(
                    "bridges? (?:(\\d{1,3}) (days?|hours?)|half a day|a day)", said -> Heard.as(bridged(said))));
    private static final Slot<Band> USUAL = Slot.one("band of temperatures", Senses.longest(PlaceFacts::band));
    private static final Slot<ColdDays> COLD = Slot.one("", Senses.longest((words, bench) -> cold(words)));
    private static final Slot<Hazard> HAZARD = Slot.many(
            "",
            Senses.any(List.of(
                    Senses.oneOf(PlaceTerms.HAZARDS),
                    Senses.led(List.of("hazard", "hazards"), PlaceTerms.HAZARDS),
                    Senses.matching("hazards?:? (\\S+)", said -> notKnown(said.text(1))))));
    private static final Slot<Boolean> NO_HAZARD = Slot.one("", Senses.flag("no hazards?"));
    private static final Slot<String> LIGHT = Slot.one("", Senses.phraseAfter("light"));

    static final List<Slot<?>> SLOTS = List.of(
            Slots.NAME,
            SORT,
            SERVES,
            ROOM,
            CHECK,
            BRIDGES,
            USUAL,
            COLD,
            HAZARD,
            NO_HAZARD,
            LIGHT,
            Slots.CALLED,
            Slots.NOTE);

    private static Heard<Hazard> notKnown(String word) {
        List<String> all =
                Stream.of(Hazard.values()).map(PlaceTerms.HAZARDS::say).toList();
        return Heard.not(
                "no hazard",
                "'" + word + "' is no hazard. Write " + String.join(", ", all) + ", or no hazard to strike them out.");
    }

    private static Optional<Heard<Band>> band(String words, Bench bench) {
        return Temperatures.isSure(words)
                        && Temperatures.parseBand(words).value().isPresent()
                ? Optional.of(Temperatures.parseBand(words))
                : Optional.empty();
    }

    private static Optional<Heard<ColdDays>> cold(String words) {
        String said = Fold.of(words);
        boolean led = said.startsWith("cold ") && words.length() > "cold ".length();
        return led ? Optional.of(ColdDayWords.parse(words.substring("cold ".length()))) : Optional.empty();
    }

    private static Duration bridged(Groups said) {
        if (!said.has(1)) {
            return said.text(0).endsWith("half a day") ? Duration.ofHours(12) : Duration.ofDays(1);
        }
        return said.text(2).startsWith("d") ? Duration.ofDays(said.number(1)) : Duration.ofHours(said.number(1));
    }

    /** The place with what is written put over what it was. */
    Place over(Place before) {
        Sort sort = filled.get(SORT).orElse(before.sort());
        return new Place(
                before.id(),
                filled.get(Slots.CALLED).orElse(before.name()),
                sort,
                filled.get(SERVES).orElse(filled.has(SORT) ? sort.usuallyServes() : before.serves()),
                filled.get(USUAL).or(before::usual),
                filled.get(COLD).orElse(before.coldDays()),
                filled.get(LIGHT).orElse(before.light()),
                filled.get(ROOM).or(before::room),
                filled.get(CHECK).orElse(before.checkEveryDays()),
                filled.get(BRIDGES).orElseGet(() -> bridges(before, sort)),
                hazards(before),
                filled.get(Slots.NOTE).orElse(before.note()));
    }

    /** What is usual for the old sort makes way for what is usual for the new one. */
    private static Duration bridges(Place before, Sort sort) {
        return before.bridges().equals(before.sort().usuallyBridges()) ? sort.usuallyBridges() : before.bridges();
    }

    private Set<Hazard> hazards(Place before) {
        Set<Hazard> hazards = new HashSet<>(filled.has(NO_HAZARD) ? Set.of() : before.hazards());
        hazards.addAll(filled.all(HAZARD));
        return hazards;
    }

    /** Whether the days on which the place is cold are among them. */
    boolean sayColdDays() {
        return filled.has(COLD);
    }

    void say(Place place, Draft draft) {
        filled.get(Slots.CALLED).ifPresent(name -> draft.means("from now on called " + name));
        filled.get(ROOM).ifPresent(room -> draft.means("room for " + Counts.of(room, "pot")));
        filled.get(USUAL)
                .ifPresent(band -> draft.means("usually "
                        + Temperatures.fromTo(
                                band, draft.bench().journal().settings().temperatures())));
        filled.get(COLD).ifPresent(days -> draft.means("cold " + ColdDayWords.say(days)));
        filled.get(CHECK)
                .ifPresent(days ->
                        draft.means(days == 0 ? "never asked for a check" : "a check every " + Counts.of(days, "day")));
        filled.get(BRIDGES)
                .ifPresent(time -> draft.means(
                        time.isZero()
                                ? "readings are not bridged"
                                : "readings up to " + Spells.say(time) + " apart are bridged"));
        if (!filled.all(HAZARD).isEmpty() || filled.has(NO_HAZARD)) {
            draft.means("hazards: " + said(place));
        }
        filled.get(LIGHT).ifPresent(light -> draft.means("light: " + light));
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
    }

    private static String said(Place place) {
        return place.hazards().isEmpty()
                ? "none"
                : place.hazards().stream().sorted().map(PlaceTerms.HAZARDS::say).collect(Collectors.joining(", "));
    }
}
