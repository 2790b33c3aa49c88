// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Origin;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Trench;
import sillbook.season.Ahead;
import sillbook.season.PotNow;
import sillbook.season.Today.Attention;

/**
 * What stands beside an answer: what to beware of, and what was taken for granted to give it.
 *
 * @param assumed a phrase each
 */
public record Provisos(List<Warned> warnings, List<String> assumed) {
    public static final Provisos NONE = new Provisos(List.of(), List.of());

    public Provisos {
        warnings = List.copyOf(warnings);
        assumed = List.copyOf(assumed);
    }

    /** Of some pots; those of which the same is said stand together. */
    public static Provisos of(Journal journal, List<PotNow> pots) {
        ConcernWords concerns = new ConcernWords(journal);
        PotNames names = new PotNames(journal);
        List<Warned> warnings = new ArrayList<>();
        alike(pots, pot -> pot.concerns().stream())
                .forEach((concern, whose) ->
                        warnings.add(new Warned(concern.code(), names.labels(whose) + ": " + concerns.say(concern))));
        List<String> assumed = new ArrayList<>();
        alike(pots, Provisos::assumed)
                .forEach((figure, whose) -> assumed.add(names.labels(whose) + ": "
                        + FigureValues.named(figure.name(), figure.range(), journal.settings())));
        return new Provisos(warnings, assumed);
    }

    /** Of ground in which pots stand buried: what is taken for granted to foretell it. */
    public static Provisos ofGround(Journal journal, List<Trench> trenches) {
        List<String> assumed = new ArrayList<>();
        for (Trench trench : trenches) {
            String place = journal.places().get(trench.place()).name();
            GroundWhy.judged(trench, journal.settings()).forEach(figure -> assumed.add(place + ": " + figure));
        }
        return new Provisos(List.of(), assumed);
    }

    private static Stream<FigureInForce> assumed(PotNow pot) {
        return pot.ahead().stream()
                .map(Ahead::figure)
                .flatMap(figure -> figure.stream())
                .filter(figure -> figure.origin() == Origin.ASSUMED)
                .distinct();
    }

    /** What there is of some pots, each with those it is so of. */
    private static <T> Map<T, List<Id<Pot>>> alike(List<PotNow> pots, Function<PotNow, Stream<T>> what) {
        Map<T, List<Id<Pot>>> alike = new LinkedHashMap<>();
        for (PotNow pot : pots) {
            what.apply(pot)
                    .forEach(one -> alike.computeIfAbsent(one, none -> new ArrayList<>())
                            .add(pot.life().pot().id()));
        }
        return alike;
    }

    /** Of places that want attention. */
    public static Provisos ofPlaces(Journal journal, List<Attention> places) {
        AttentionWords words = new AttentionWords(journal);
        return new Provisos(
                places.stream()
                        .map(place -> new Warned(place.code(), words.say(place) + "."))
                        .toList(),
                List.of());
    }
}
