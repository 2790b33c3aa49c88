// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;

/**
 * How warm a pot's first weeks in the cold were, when its roots should grow. They grow fast at 9 C (48 F), less at 4.5 C (40 F), and hardly
 * at 0.5 C (33 F) (Cornell University, bulb newsletter of June 2013); the first two weeks want 4.5 to 10 C (Iowa State University, Vos, 2024).
 */
record FirstWeeks(Journal journal, PotLife life, LocalDate today) {
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

    /** By the thermometers on those days, else as the place usually is. */
    private Optional<Temperature> highest(Id<Place> place, LocalDate began) {
        ReadDays read = ReadDays.of(journal, place, today);
        DaySpan first = DaySpan.of(began, began.plusDays(DAYS));
        return Stream.concat(
                        read.sums(first).values().stream().map(DayRead::between),
                        read.spansIn(first).map(ReadDays.Spanned::between))
                .map(Band::high)
                .max(Comparator.comparing(Temperature::milli))
                .or(() -> journal.places().get(place).usual().map(Band::high));
    }
}
