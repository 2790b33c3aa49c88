// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.reckon.dates.DaySpan;

/** The pots that stood through the same as one that failed: the same days at the same place. */
record Company(PotLife failed, List<PotLife> lives) {

    /** Those still growing, by label. */
    List<Id<Pot>> through(Suspect suspect) {
        List<Phase> stretches =
                suspect.clues().stream().flatMap(this::stretches).toList();
        return lives.stream()
                .filter(life -> life.isGrowing() && !life.pot().equals(failed.pot()))
                .filter(life -> life.phases().stream().anyMatch(phase -> sharesOne(phase, stretches)))
                .map(life -> life.pot().id())
                .toList();
    }

    private static boolean sharesOne(Phase phase, List<Phase> stretches) {
        return stretches.stream()
                .anyMatch(stretch -> stretch.place().equals(phase.place())
                        && stretch.days().intersection(phase.days()).isPresent());
    }

    /** Where it stood, and the days of it that the clue tells of. */
    private Stream<Phase> stretches(Clue clue) {
        if (clue instanceof Clue.TooCold cold) {
            return during(cold.reading());
        }
        if (clue instanceof Clue.TooWarm warm) {
            return during(warm.reading());
        }
        if (clue instanceof Clue.Jotted jotted) {
            return on(jotted.day());
        }
        return clue instanceof Clue.Found found ? on(found.day()) : Stream.of();
    }

    private Stream<Phase> during(StoodThrough reading) {
        Optional<Id<Place>> place = Optional.of(reading.place());
        return failed.phases().stream()
                .filter(phase -> phase.place().equals(place))
                .flatMap(phase -> phase.days().intersection(reading.days()).stream()
                        .map(both -> new Phase(phase.stage(), place, both, true)));
    }

    private Stream<Phase> on(LocalDate day) {
        return failed.phases().stream()
                .filter(phase -> phase.place().isPresent() && phase.days().contains(day))
                .map(phase -> new Phase(phase.stage(), phase.place(), DaySpan.ofInclusive(day, day), true));
    }
}
