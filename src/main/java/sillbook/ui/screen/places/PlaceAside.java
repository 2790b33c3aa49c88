// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.season.Job;
import sillbook.season.PlaceNow;
import sillbook.season.Today.Attention;
import sillbook.text.Initial;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.words.AttentionWords;
import sillbook.words.CautionWords;
import sillbook.words.ClimateWords;
import sillbook.words.Days;
import sillbook.words.PotNames;

/** The two lines in the foot on a place: what stands there; and what is wrong, what to beware of, or what was noted. */
record PlaceAside(State state) {
    private static final String CAUTION = "▴ ";

    Aside of(PlaceNow now) {
        return outOfBand(now)
                .map(sentence -> Aside.of(now.place().name(), sentence))
                .orElseGet(() ->
                        Aside.of(now.place().name(), stands(now), gravest(now).orElse("")));
    }

    /** Where nothing is graver than that pots stand too warm or too cold: how much, and which. */
    private Optional<String> outOfBand(PlaceNow now) {
        boolean forCold = now.place().serves() == Stage.COLD;
        ClimateWords words =
                new ClimateWords(state.journal().settings(), state.shown().at());
        return PlaceSign.attention(state, now.place()).stream()
                .findFirst()
                .filter(gravest -> !now.pots().isEmpty())
                .filter(Attention.OutOfBand.class::isInstance)
                .map(Attention.OutOfBand.class::cast)
                .map(out -> words.atLength(out.strayed(), forCold) + (forCold ? " In the cold here: " : " Stand here: ")
                        + labels(now) + ".");
    }

    private String labels(PlaceNow now) {
        return new PotNames(state.journal()).labels(now.pots());
    }

    private String stands(PlaceNow now) {
        if (now.pots().isEmpty()) {
            return PlacePots.NOTHING;
        }
        return round(now.round()) + "Stand here: " + labels(now) + ".";
    }

    private String round(Optional<Job.Round> round) {
        return round.map(next -> "Round " + due(next, state.shown().today()) + ". ")
                .orElse("");
    }

    /** {@code due today}, {@code due since Mon 19 Oct}, {@code next Thu 14 Jan}. */
    static String due(Job.Round round, LocalDate today) {
        if (round.on().equals(today)) {
            return "due today";
        }
        return (round.on().isBefore(today) ? "due since " : "next ") + Days.day(round.on());
    }

    private Optional<String> gravest(PlaceNow now) {
        List<String> grave = new ArrayList<>();
        List<String> slight = new ArrayList<>();
        AttentionWords words = new AttentionWords(state.journal());
        for (Attention attention : PlaceSign.attention(state, now.place())) {
            (attention instanceof Attention.Unchecked ? slight : grave).add(sentence(words.say(attention)));
        }
        Stream<String> cautions = new CautionWords(
                        state.kit().handbook(), state.journal().settings())
                .of(now.place()).stream().map(caution -> CAUTION + caution);
        Stream<String> note = Stream.of(now.place().note(), now.place().light()).filter(text -> !text.isEmpty());
        return Stream.of(grave.stream(), cautions, kept(now).stream(), slight.stream(), note)
                .flatMap(each -> each)
                .findFirst();
    }

    /** What today says of a place, a sentence each, but for its round. */
    List<String> sentences(Place place) {
        AttentionWords words = new AttentionWords(state.journal());
        return PlaceSign.attention(state, place).stream()
                .filter(attention -> !(attention instanceof Attention.Unchecked))
                .map(words::say)
                .map(PlaceAside::sentence)
                .toList();
    }

    /** {@code In two weeks 2 pots find no place with room to go on to: H8-H9.} */
    Optional<String> kept(PlaceNow now) {
        int pots = now.kept().size();
        return pots == 0
                ? Optional.empty()
                : Optional.of("In two weeks " + pots + (pots == 1 ? " pot finds" : " pots find")
                        + " no place with room to go on to: " + new PotNames(state.journal()).labels(now.kept()) + ".");
    }

    private static String sentence(String words) {
        return Initial.large(words) + ".";
    }
}
