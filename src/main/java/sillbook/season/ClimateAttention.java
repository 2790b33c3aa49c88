// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.season.PlaceClimate.Trial;
import sillbook.season.Today.Attention;

/** What the thermometers of a place say that wants attention. Of a place that was never read they say nothing. */
record ClimateAttention(Journal journal, Standings standings, LocalDate today) {
    /** What has become of a trial is said for so many days more. */
    private static final int SAID_AFTER_DAYS = 7;

    /** The gravest first. */
    List<Attention> of(Place place) {
        return of(place, PlaceClimate.of(journal, place.id(), today));
    }

    List<Attention> of(Place place, PlaceClimate climate) {
        if (climate.lastDay().isEmpty()) {
            return List.of();
        }
        List<Attention> found = new ArrayList<>();
        boolean isTaken = standings.count(place.id()) > 0;
        Optional<Attention> unread = unread(place, climate);
        if (isTaken) {
            frost(place).ifPresent(found::add);
            if (unread.isEmpty()) {
                outside(place, climate).ifPresent(found::add);
            }
            unread.ifPresent(found::add);
        } else {
            trial(place, climate).ifPresent(found::add);
        }
        return found;
    }

    /** What the pots there stood through: one that came afterwards, or was looked at since, does not count. */
    private Optional<Attention> frost(Place place) {
        List<Frost> stoodThrough =
                ofEachPot(place).flatMap(days -> Frost.gravest(days).stream()).toList();
        return Frost.gravest(stoodThrough).map(frost -> frost.there(count(stoodThrough, frost)));
    }

    /** The days of the frost that pots there stood through, the first first. */
    List<Frost> frosts(Place place) {
        return ofEachPot(place)
                .flatMap(List::stream)
                .distinct()
                .sorted(Comparator.comparing(Frost::on))
                .toList();
    }

    private Stream<List<Frost>> ofEachPot(Place place) {
        return standings.at(place.id()).stream()
                .filter(life -> life.stage().isBefore(Stage.IN_BLOOM))
                .map(life -> Frost.days(journal, life, place.id(), today).toList());
    }

    private static int count(List<Frost> stoodThrough, Frost frost) {
        return (int) stoodThrough.stream()
                .filter(each -> each.isHard() == frost.isHard())
                .count();
    }

    /** As it is now: what was read more than a week ago says nothing of that. */
    private Optional<Attention> outside(Place place, PlaceClimate climate) {
        return climate.band()
                .filter(band -> climate.week().isPresent())
                .flatMap(band -> climate.strayed()
                        .<Attention>map(strayed -> new Attention.OutOfBand(
                                place.id(), strayed, band, climate.now().map(LastRead::temperature)))
                        .or(() -> climate.drift().map(drift -> new Attention.LeavingBand(place.id(), drift, band))));
    }

    /** Only where pots have their cold: of a warm sill nothing is counted. */
    private Optional<Attention> unread(Place place, PlaceClimate climate) {
        boolean isCounted = standings.at(place.id()).stream().anyMatch(life -> life.stage() == Stage.COLD);
        return climate.lastDay()
                .filter(last -> isCounted && bridged(place).compareTo(since(last)) < 0)
                .map(last ->
                        new Attention.Unread(place.id(), last, (int) since(last).toDays()));
    }

    private Duration since(LocalDate last) {
        return Duration.ofDays(ChronoUnit.DAYS.between(last, today));
    }

    /** A day at least: of which hour today is nobody knows here. */
    private static Duration bridged(Place place) {
        return place.bridges().compareTo(Duration.ofDays(1)) < 0 ? Duration.ofDays(1) : place.bridges();
    }

    private Optional<Attention> trial(Place place, PlaceClimate climate) {
        return climate.band()
                .filter(band -> place.serves() == Stage.COLD)
                .flatMap(band -> climate.trial()
                        .filter(this::isSaid)
                        .map(trial -> new Attention.OnTrial(place.id(), trial, band)));
    }

    /** Of a place that is read too seldom for a trial it is said for no longer either. */
    private boolean isSaid(Trial trial) {
        int most = Trial.DAYS + SAID_AFTER_DAYS;
        return trial.days() <= most && (trial.days() > 0 || trial.since().isAfter(today.minusDays(most)));
    }
}
