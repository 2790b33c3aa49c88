// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.PottingMix;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.past.Influence;
import sillbook.season.past.Trait;

/** The things that may have made a pot do well, as they are named and as they go into sentences. */
public record InfluenceWords(Journal journal) {
    private static final Vocabulary<Trait> TRAITS = Vocabulary.<Trait>of("way to stand")
            .with(Trait.VARIETY, "variety", "varieties")
            .with(Trait.MIX, "mix", "mixes", "potting mix", "potting mixes")
            .with(Trait.PLACE, "place", "places")
            .with(Trait.KIND, "kind", "kinds")
            .with(Trait.WINTER, "winter", "winters", "season");

    /** Those that standings are made of: {@code variety}, {@code mix} or {@code place}. */
    public static Heard<Trait> trait(String word) {
        return TRAITS.parse(word)
                .then(trait -> trait == Trait.KIND || trait == Trait.WINTER
                        ? Heard.not("no way to stand", "Standings are by variety, mix or place.")
                        : Heard.as(trait));
    }

    /** As a head over a column, and as the name of a value. */
    public static String code(Trait trait) {
        return TRAITS.say(trait);
    }

    /** More than one of it. */
    public static String traits(Trait trait) {
        return switch (trait) {
            case KIND -> "kinds";
            case VARIETY -> "varieties";
            case MIX -> "potting mixes";
            case PLACE -> "places of cold";
            case WINTER -> "winters";
        };
    }

    /** {@code 'Marrow Lane'}, {@code cellar}. */
    public String name(Influence influence) {
        return influence.fold(new Saying("", "", "", "", ""));
    }

    /** What a pot is of, in or from: {@code of 'Marrow Lane'}, {@code from the cellar}. */
    String whose(Influence influence) {
        return influence.fold(new Saying("of ", "of ", "in ", "from the ", "of "));
    }

    /** What a pot did with it: {@code stood in the cellar}. */
    String did(Influence influence) {
        return influence.fold(new Saying("were of kind ", "were of ", "grew in ", "stood in the ", "grew in "));
    }

    /** What another pot would have to do to tell: {@code elsewhere}. */
    static String otherwise(Trait trait) {
        return switch (trait) {
            case KIND -> "of another kind";
            case VARIETY -> "of another variety";
            case MIX -> "in another mix";
            case PLACE -> "elsewhere";
            case WINTER -> "in another winter";
        };
    }

    static Trait traitOf(Influence influence) {
        return influence.fold(new TraitOf());
    }

    /** The name, after the words that lead to it. */
    private final class Saying implements Influence.Cases<String> {
        private final String toKind;
        private final String toVariety;
        private final String toMix;
        private final String toPlace;
        private final String toWinter;

        Saying(String toKind, String toVariety, String toMix, String toPlace, String toWinter) {
            this.toKind = toKind;
            this.toVariety = toVariety;
            this.toMix = toMix;
            this.toPlace = toPlace;
            this.toWinter = toWinter;
        }

        @Override
        public String kind(Kind kind) {
            return toKind + kind;
        }

        @Override
        public String variety(Id<Variety> variety) {
            return toVariety + "'" + journal.varieties().get(variety).name() + "'";
        }

        @Override
        public String mix(Optional<Id<PottingMix>> mix) {
            return toMix + mix.map(id -> journal.pottingMixes().get(id).name()).orElse("a mix nobody wrote");
        }

        @Override
        public String place(Optional<Id<Place>> place) {
            return toPlace + place.map(id -> journal.places().get(id).name()).orElse("place nobody wrote");
        }

        @Override
        public String winter(Season winter) {
            return toWinter + journal.nameOf(winter);
        }
    }

    /** Of which trait it is. */
    private static final class TraitOf implements Influence.Cases<Trait> {
        @Override
        public Trait kind(Kind kind) {
            return Trait.KIND;
        }

        @Override
        public Trait variety(Id<Variety> variety) {
            return Trait.VARIETY;
        }

        @Override
        public Trait mix(Optional<Id<PottingMix>> mix) {
            return Trait.MIX;
        }

        @Override
        public Trait place(Optional<Id<Place>> place) {
            return Trait.PLACE;
        }

        @Override
        public Trait winter(Season winter) {
            return Trait.WINTER;
        }
    }
}
