// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.Temperature;

/** One row while it is read, column by column, in the way {@link Values} wrote it. */
final class Row {
    private final ResultSet result;
    private final Map<String, List<?>> parts;
    private int column;

    /** The row that the result stands on. */
    Row(ResultSet result) {
        this(result, Map.of());
    }

    /** The row of an entry; its parts are found by its id. */
    Row(ResultSet result, Map<String, List<?>> parts) {
        this.result = result;
        this.parts = parts;
    }

    /** What is read of a row. */
    @FunctionalInterface
    interface Reading<T> {
        T of(Row row) throws SQLException;
    }

    /** Goes on at a column. */
    Row at(Table table, String name) {
        column = table.indexOf(name);
        return this;
    }

    /** The parts of the entry with this id, which were read before it. They are of the type its mapping reads. */
    @SuppressWarnings("unchecked")
    <P> List<P> parts(Id<?> id) {
        return (List<P>) parts.getOrDefault(id.toString(), List.of());
    }

    String text() throws SQLException {
        return result.getString(++column);
    }

    Optional<String> optionalText() throws SQLException {
        return Optional.ofNullable(result.getString(++column));
    }

    int number() throws SQLException {
        return result.getInt(++column);
    }

    long large() throws SQLException {
        return result.getLong(++column);
    }

    Optional<Integer> optionalNumber() throws SQLException {
        int number = number();
        return result.wasNull() ? Optional.empty() : Optional.of(number);
    }

    Optional<Long> optionalLarge() throws SQLException {
        long large = large();
        return result.wasNull() ? Optional.empty() : Optional.of(large);
    }

    double real() throws SQLException {
        return result.getDouble(++column);
    }

    Optional<Double> optionalReal() throws SQLException {
        double real = real();
        return result.wasNull() ? Optional.empty() : Optional.of(real);
    }

    boolean flag() throws SQLException {
        return number() != 0;
    }

    <T> Id<T> id() throws SQLException {
        return Id.parse(text());
    }

    <T> Optional<Id<T>> optionalId() throws SQLException {
        return optionalText().map(Id::parse);
    }

    <E extends Enum<E>> E word(Class<E> type) throws SQLException {
        return Enum.valueOf(type, text());
    }

    <E extends Enum<E>> Optional<E> optionalWord(Class<E> type) throws SQLException {
        return optionalText().map(word -> Enum.valueOf(type, word));
    }

    <E extends Enum<E>> Set<E> words(Class<E> type) throws SQLException {
        Set<E> words = EnumSet.noneOf(type);
        String text = text();
        if (!text.isEmpty()) {
            for (String word : List.of(text.split(" "))) {
                words.add(Enum.valueOf(type, word));
            }
        }
        return words;
    }

    /** In seconds. */
    Duration duration() throws SQLException {
        return Duration.ofSeconds(large());
    }

    Season season() throws SQLException {
        return new Season(number());
    }

    Instant instant() throws SQLException {
        return Instant.ofEpochMilli(large());
    }

    Optional<Instant> optionalInstant() throws SQLException {
        return optionalLarge().map(Instant::ofEpochMilli);
    }

    LocalDate date() throws SQLException {
        return date(text());
    }

    Optional<LocalDate> optionalDate() throws SQLException {
        return optionalText().map(Row::date);
    }

    /** A formatter would do the same, and be most of the time it takes to read a journal. */
    private static LocalDate date(String text) {
        return LocalDate.of(
                Integer.parseInt(text, 0, 4, 10), Integer.parseInt(text, 5, 7, 10), Integer.parseInt(text, 8, 10, 10));
    }

    MonthDay monthDay() throws SQLException {
        String text = text();
        return MonthDay.of(Integer.parseInt(text, 0, 2, 10), Integer.parseInt(text, 3, 5, 10));
    }

    /** Three columns. */
    Day day() throws SQLException {
        LocalDate likely = date();
        Optional<LocalDate> earliest = optionalDate();
        Optional<LocalDate> latest = optionalDate();
        return new Day(earliest.orElse(likely), likely, latest.orElse(likely));
    }

    /** Three columns. */
    Optional<Day> optionalDay() throws SQLException {
        Optional<LocalDate> likely = optionalDate();
        Optional<LocalDate> earliest = optionalDate();
        Optional<LocalDate> latest = optionalDate();
        return likely.map(day -> new Day(earliest.orElse(day), day, latest.orElse(day)));
    }

    /** Two columns. */
    Kind kind() throws SQLException {
        return new Kind(text(), text());
    }

    /** Two columns. */
    Optional<Kind> optionalKind() throws SQLException {
        Optional<String> name = optionalText();
        Optional<String> group = optionalText();
        return name.map(given -> new Kind(given, group.orElse("")));
    }

    /** Two columns. */
    Optional<Length> optionalLength() throws SQLException {
        Optional<Integer> tenths = optionalNumber();
        Optional<String> written = optionalText();
        return tenths.map(given -> new Length(given, written.orElse("")));
    }

    /** Two columns. */
    Optional<Money> optionalMoney() throws SQLException {
        Optional<Long> minor = optionalLarge();
        Optional<String> currency = optionalText();
        return minor.map(given -> new Money(given, currency.orElse("")));
    }

    /** Two columns. */
    Temperature temperature() throws SQLException {
        return new Temperature(number(), text());
    }

    /** Two columns. */
    Optional<Temperature> optionalTemperature() throws SQLException {
        Optional<Integer> milli = optionalNumber();
        Optional<String> written = optionalText();
        return milli.map(given -> new Temperature(given, written.orElse("")));
    }
}
