// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.Today.Attention;

/**
 * Why something is said of how warm a place is, or of how it is read.
 *
 * @param <R> what is said
 */
public sealed interface WhyClimate<R> extends Why<R> permits WhyFrost, WhyStrayed, WhyDrift, WhyUnread, WhyTrial {

    /** One answer for each thing that is said. */
    interface ClimateCases<T> {
        T frost(WhyFrost why);

        T strayed(WhyStrayed why);

        T drift(WhyDrift why);

        T unread(WhyUnread why);

        T trial(WhyTrial why);
    }

    <T> T foldClimate(ClimateCases<T> cases);

    /** Of all that is said of a place, the gravest first. */
    static List<WhyClimate<?>> of(Journal journal, Standings standings, Place place, LocalDate today) {
        ClimateReading reading = new ClimateReading(journal, place, today);
        PlaceClimate climate = reading.read();
        ClimateAttention attention = new ClimateAttention(journal, standings, today);
        List<Attention> said = attention.of(place, climate);
        return Stream.of(
                        first(said, Attention.FrostThere.class)
                                .map(frost -> new WhyFrost(journal, place, today, frosty(attention, place), frost)),
                        WhyStrayed.of(journal, place, today, climate),
                        WhyDrift.of(journal, place, today, climate, reading),
                        first(said, Attention.Unread.class)
                                .map(unread -> new WhyUnread(journal, place, today, unread.last(), unread.days())),
                        first(said, Attention.OnTrial.class)
                                .map(trial -> new WhyTrial(journal, place, today, reading.tried(), trial.trial())))
                .flatMap(Optional::stream)
                .<WhyClimate<?>>map(why -> why)
                .toList();
    }

    private static List<WhyFrost.Frosty> frosty(ClimateAttention attention, Place place) {
        return attention.frosts(place).stream()
                .map(frost -> new WhyFrost.Frosty(frost.on(), frost.lowest()))
                .toList();
    }

    private static <A extends Attention> Optional<A> first(List<Attention> said, Class<A> sort) {
        return said.stream().filter(sort::isInstance).map(sort::cast).findFirst();
    }

    Journal journal();

    Place place();

    /** The day it is said on. */
    LocalDate today();

    @Override
    default <T> T fold(Cases<T> cases) {
        return cases.climate(this);
    }

    @Override
    default Set<Lever> levers() {
        return EnumSet.of(Lever.READINGS);
    }
}
