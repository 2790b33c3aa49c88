// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Journal;

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
            List<Boolean> wasRead = IntStream.range(0, cells)
                    .mapToObj(cell -> wasRead(journal, pot.life(), middle(reached, cell), today))
                    .toList();
            return new ColdBar(wasRead, (int) Math.round(need.potted().typical() / DAYS_TO_A_CELL));
        });
    }

    /** The day on which the middle of a cell was had. */
    private static LocalDate middle(List<LocalDate> reached, int cell) {
        return reached.get((int) ((cell + 0.5) * DAYS_TO_A_CELL)).minusDays(1);
    }

    private static boolean wasRead(Journal journal, PotLife life, LocalDate day, LocalDate today) {
        return life.phases().stream()
                .filter(phase -> phase.days().contains(day))
                .flatMap(phase -> phase.place().stream())
                .anyMatch(place -> ReadDays.of(journal, place, today).isKnown(day));
    }

    /** Cells still to come. */
    public int toCome() {
        return Math.max(0, need - wasRead.size());
    }
}
