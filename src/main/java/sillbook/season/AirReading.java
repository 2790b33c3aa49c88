// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.model.DayRead;
import sillbook.model.Journal;
import sillbook.model.Temperature;
import sillbook.model.Trench.Air;
import sillbook.model.Trench.Means;
import sillbook.model.Trench.Read;
import sillbook.reckon.soil.MonthlyMeans;
import sillbook.reckon.soil.YearlyWave;

/**
 * The year's wave of the air over a trench: through the means that are written, or through those of the last year a thermometer outdoors was read.
 *
 * @param today up to which it was read
 */
record AirReading(Journal journal, LocalDate today) implements Air.Cases<Optional<YearlyWave>> {
    /** Of a month so many days must be known for a mean; a judgement of ours. */
    static final int LEAST_DAYS = 20;

    @Override
    public Optional<YearlyWave> means(Means air) {
        return Optional.of(wave(air.months().stream().map(Temperature::celsius).toList()));
    }

    /** Empty where a month is missing in the year up to today. */
    @Override
    public Optional<YearlyWave> read(Read air) {
        List<DayRead> year = List.copyOf(journal.daysRead()
                .at(air.outdoors())
                .subMap(today.minusYears(1), false, today, true)
                .values());
        List<Double> months = new ArrayList<>();
        for (Month month : Month.values()) {
            mean(year, month).ifPresent(months::add);
        }
        return months.size() == Month.values().length ? Optional.of(wave(months)) : Optional.empty();
    }

    private static OptionalDouble mean(List<DayRead> days, Month month) {
        List<DayRead> ofMonth =
                days.stream().filter(day -> day.day().getMonth() == month).toList();
        return ofMonth.size() < LEAST_DAYS
                ? OptionalDouble.empty()
                : ofMonth.stream().mapToDouble(day -> day.mean() / 1000.0).average();
    }

    private static YearlyWave wave(List<Double> months) {
        return new MonthlyMeans(months).wave();
    }
}
