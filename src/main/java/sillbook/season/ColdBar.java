// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;

/**
 * A pot's cold filling up: half a week of what counts to a cell, the first first.
 *
 * @param wasRead of each cell had, whether thermometers saw most of it; else it is assumed
 * @param need so many cells are needed
 */
public record ColdBar(List<Boolean> wasRead, int need) {
    private static final double DAYS_TO_A_CELL = 3.5;

    public ColdBar {
        wasRead = List.copyOf(wasRead);
    }

    /** Empty where nothing was read, or no cold is needed. */
    public static Optional<ColdBar> of(Journal journal, PotNow pot, LocalDate today) {
        List<LocalDate> reached = pot.life().cold().reached();
        return pot.coldNeed().filter(need -> !reached.isEmpty()).map(need -> {
            int cells = (int) (reached.size() / DAYS_TO_A_CELL);
            Map<Id<Place>, ReadDays> read = new HashMap<>();
            Function<Id<Place>, ReadDays> reading = place -> ReadDays.of(journal, place, today);
            List<Boolean> wasRead = IntStream.range(0, cells)
                    .mapToObj(cell -> middle(reached, cell))
                    .map(day -> placesOn(day, pot.life())
                            .anyMatch(place ->
                                    read.computeIfAbsent(place, reading).isKnown(day)))
                    .toList();
            return new ColdBar(wasRead, (int) Math.round(need.potted().typical() / DAYS_TO_A_CELL));
        });
    }

    /** The day on which the middle of a cell was had. */
    private static LocalDate middle(List<LocalDate> reached, int cell) {
        return reached.get((int) ((cell + 0.5) * DAYS_TO_A_CELL)).minusDays(1);
    }

    private static Stream<Id<Place>> placesOn(LocalDate day, PotLife life) {
        return life.phases().stream()
                .filter(phase -> phase.days().contains(day))
                .flatMap(phase -> phase.place().stream());
    }

    /** Cells still to come. */
    public int toCome() {
        return Math.max(0, need - wasRead.size());
    }
}
