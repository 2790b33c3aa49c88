// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import sillbook.handbook.FigureName;
import sillbook.model.Band;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.SpanReading;
import sillbook.model.Temperature;

/**
 * How warm a pot's first weeks in the cold were, when its roots should grow. They grow fast at 9 C (48 F), less at 4.5 C (40 F), and hardly
 * at 0.5 C (33 F) (Cornell University, bulb newsletter of June 2013); the first two weeks want 4.5 to 10 C (Iowa State University, Vos, 2024).
 */
record FirstWeeks(Journal journal, PotLife life) {
    private static final int DAYS = 14;

    /** Said of a pot without roots that never had as much as the least of the good band, as far as anybody knows. */
    Optional<Concern> nearFreezing(PotFigures figures) {
        Optional<Double> least =
                figures.find(FigureName.COLD_BAND).map(band -> band.range().low());
        if (life.seen().isRooted() || least.isEmpty()) {
            return Optional.empty();
        }
        return life.cold()
                .began()
                .flatMap(began -> place(began)
                        .flatMap(place -> highest(place, began)
                                .filter(highest -> highest.celsius() < least.get())
                                .map(highest -> new Concern.ColdToRoot(place, highest))));
    }

    private Optional<Id<Place>> place(LocalDate began) {
        return life.phases().stream()
                .filter(phase -> phase.days().contains(began))
                .findFirst()
                .flatMap(Phase::place);
    }

    /** By readings of those days, else as the place usually is. */
    private Optional<Temperature> highest(Id<Place> place, LocalDate began) {
        return journal.spanReadingsAt(place).stream()
                .filter(reading -> touches(reading, began))
                .map(reading -> reading.between().high())
                .max(Comparator.comparing(Temperature::milli))
                .or(() -> journal.places().get(place).usual().map(Band::high));
    }

    private static boolean touches(SpanReading reading, LocalDate began) {
        return reading.from().likely().isBefore(began.plusDays(DAYS))
                && !reading.to().likely().isBefore(began);
    }
}
