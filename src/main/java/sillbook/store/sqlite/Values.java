// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.Temperature;

/** The values of one row while it is written, column by column; {@link Row} reads them in the same way. */
final class Values {
    private final Table table;
    private final @Nullable Object[] values;
    private int next;

    Values(Table table) {
        this.table = table;
        this.values = new Object[table.columns().size()];
    }

    /** In the order of the columns; NULL where nothing was written. */
    @Nullable
    Object[] all() {
        return values.clone();
    }

    /** Goes on at a column. */
    Values at(String column) {
        next = table.indexOf(column);
        return this;
    }

    private Values add(@Nullable Object value) {
        values[next++] = value;
        return this;
    }

    Values text(String text) {
        return add(text);
    }

    Values optionalText(Optional<String> text) {
        return add(text.orElse(null));
    }

    Values number(long number) {
        return add(number);
    }

    Values optionalNumber(Optional<Integer> number) {
        return add(number.orElse(null));
    }

    Values real(double real) {
        return add(real);
    }

    Values optionalReal(Optional<Double> real) {
        return add(real.orElse(null));
    }

    Values flag(boolean flag) {
        return add(flag ? 1 : 0);
    }

    Values id(Id<?> id) {
        return add(id.toString());
    }

    Values optionalId(Optional<? extends Id<?>> id) {
        return add(id.map(Id::toString).orElse(null));
    }

    Values word(Enum<?> word) {
        return add(word.name());
    }

    Values optionalWord(Optional<? extends Enum<?>> word) {
        return add(word.map(Enum::name).orElse(null));
    }

    Values words(Collection<? extends Enum<?>> words) {
        return add(words.stream().sorted().map(Enum::name).collect(Collectors.joining(" ")));
    }

    /** In seconds. */
    Values duration(Duration duration) {
        return number(duration.toSeconds());
    }

    Values season(Season season) {
        return number(season.year());
    }

    Values instant(Instant instant) {
        return add(instant.toEpochMilli());
    }

    Values optionalInstant(Optional<Instant> instant) {
        return add(instant.map(Instant::toEpochMilli).orElse(null));
    }

    Values date(LocalDate date) {
        return add(date.toString());
    }

    Values optionalDate(Optional<LocalDate> date) {
        return add(date.map(LocalDate::toString).orElse(null));
    }

    Values monthDay(MonthDay day) {
        return add(String.format(Locale.ROOT, "%02d-%02d", day.getMonthValue(), day.getDayOfMonth()));
    }

    /** Three columns. */
    Values day(Day day) {
        Optional<Day> about = Optional.of(day).filter(uncertain -> !uncertain.isExact());
        return date(day.likely()).optionalDate(about.map(Day::earliest)).optionalDate(about.map(Day::latest));
    }

    /** Two columns. */
    Values kind(Kind kind) {
        return text(kind.name()).text(kind.group());
    }

    /** Three columns. */
    Values optionalDay(Optional<Day> day) {
        day.ifPresentOrElse(this::day, () -> add(null).add(null).add(null));
        return this;
    }

    /** Two columns. */
    Values optionalKind(Optional<Kind> kind) {
        return add(kind.map(Kind::name).orElse(null)).add(kind.map(Kind::group).orElse(null));
    }

    /** Two columns. */
    Values optionalLength(Optional<Length> length) {
        return add(length.map(Length::tenths).orElse(null))
                .add(length.map(Length::written).orElse(null));
    }

    /** Two columns. */
    Values optionalMoney(Optional<Money> money) {
        return add(money.map(Money::minor).orElse(null))
                .add(money.map(Money::currency).orElse(null));
    }

    /** Two columns. */
    Values temperature(Temperature temperature) {
        return number(temperature.milli()).text(temperature.written());
    }

    /** Two columns. */
    Values optionalTemperature(Optional<Temperature> temperature) {
        return add(temperature.map(Temperature::milli).orElse(null))
                .add(temperature.map(Temperature::written).orElse(null));
    }
}
