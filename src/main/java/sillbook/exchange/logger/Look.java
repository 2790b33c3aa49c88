// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.LoggerProfile.Mark;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Found;

/**
 * What a look at the first lines of a file finds: where everything stands, not yet in which order its dates are.
 *
 * @param temperatures the columns that may be meant, counted from 0 as the heading has them
 */
record Look(
        Titled titled,
        Joined joined,
        Holdings holdings,
        Found<Separator> separator,
        List<Integer> temperatures,
        LoggerFormat told) {

    private static final String NAMED_SEPARATOR = "sep=";
    private static final int LONGEST_QUOTE = 60;

    Look {
        temperatures = List.copyOf(temperatures);
    }

    static Heard<Look> at(List<byte[]> lines, LoggerFormat told) {
        if (lines.stream().allMatch(line -> Encoding.text(line).isBlank())) {
            return Heard.not("empty", "It is empty.");
        }
        Optional<Separator> stated = stated(lines);
        Optional<Separator> known = told.separator().or(() -> stated);
        Stream<Separator> tried =
                known.map(Stream::of).orElse(Stream.of(Separator.TAB, Separator.SEMICOLON, Separator.COMMA));
        Basis basis = told.separator().isPresent() ? Basis.TOLD : stated.isPresent() ? Basis.STATED : Basis.SEEN;
        return tried.map(separator -> Grid.of(lines, separator))
                .flatMap(grid -> grid.instants().stream()
                        .map(instants -> Titled.of(grid, instants))
                        .filter(titled -> !titled.data().rows().isEmpty()))
                .max(Comparator.comparingLong(Look::filled))
                .filter(titled -> filled(titled) > 0)
                .map(titled -> in(titled, new Found<>(titled.grid().separator(), basis), told))
                .orElseGet(() -> none(lines));
    }

    /** Spreadsheets write the separator into a first line of their own. */
    private static Optional<Separator> stated(List<byte[]> lines) {
        String first = Encoding.text(lines.get(0)).strip().toLowerCase(Locale.ROOT);
        return Stream.of(Separator.values())
                .filter(separator -> first.equals(NAMED_SEPARATOR + separator.sign())
                        || (separator == Separator.TAB && first.equals(NAMED_SEPARATOR)))
                .findFirst();
    }

    /** In how many lines something stands beside an instant. */
    private static long filled(Titled titled) {
        return titled.data().rows().stream()
                .filter(row -> titled.data()
                        .columns()
                        .anyMatch(column ->
                                !titled.instants().has(column) && !row.cells().isBlank(column)))
                .count();
    }

    private static Heard<Look> none(List<byte[]> lines) {
        String first = lines.stream()
                .map(line -> Encoding.text(line).strip())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
        String quoted = first.length() > LONGEST_QUOTE ? first.substring(0, LONGEST_QUOTE) + ".." : first;
        return Heard.not(
                "no readings", "No line of it has both an instant and a temperature. It begins with '" + quoted + "'.");
    }

    private static Heard<Look> in(Titled titled, Found<Separator> separator, LoggerFormat told) {
        Optional<Joined> joined = new JoinedSearch(titled, told).find();
        if (joined.isEmpty()) {
            return Heard.not(
                    "commas of two sorts",
                    "Commas stand between its columns and before its decimals, and which are which cannot be told. Write it"
                            + " anew with semicolons between.");
        }
        Holdings holdings = new Holdings(titled, joined.get());
        return chosen(new Look(titled, joined.get(), holdings, separator, holdings.temperatures(), told));
    }

    private static Heard<Look> chosen(Look look) {
        int columns = (int) look.titled().grid().columns().count();
        Optional<Integer> wrong = look.told().column().filter(number -> number > columns);
        if (wrong.isPresent()) {
            return Heard.not("no column " + wrong.get(), "It has no column " + wrong.get() + ", only " + columns + ".");
        }
        Optional<Integer> when = look.told()
                .column()
                .filter(number -> look.titled().instants().has(look.joined().cell(number - 1)));
        if (when.isPresent()) {
            return Heard.not(
                    "column " + when.get() + " holds instants",
                    "Column " + when.get() + " of it holds the instants. Name the column of the temperature.");
        }
        if (look.temperatures().isEmpty() && look.told().column().isEmpty()) {
            return Heard.not("no temperature", "None of its columns holds temperatures.");
        }
        Optional<String> nobody =
                look.told().device().filter(name -> look.device().isEmpty());
        return nobody.<Heard<Look>>map(name -> Heard.not(
                        "no such device", "No column of it names a device '" + name + "'." + look.devicesThere()))
                .orElseGet(() -> Heard.as(look));
    }

    private String devicesThere() {
        List<String> all = holdings.device().stream()
                .mapToObj(titled.data()::distinct)
                .flatMap(names -> names.stream().sorted())
                .toList();
        return all.isEmpty() ? "" : " It has " + Counts.and(all) + ".";
    }

    /** The device that was told, as the file writes it. */
    Optional<String> deviceMeant() {
        return told.device()
                .map(name -> device().stream()
                        .mapToObj(column -> holdings.spelled(column, name))
                        .flatMap(Optional::stream)
                        .findFirst()
                        .orElse(name));
    }

    /** The column that is read, counted from 0; empty while it is open which. */
    Optional<Integer> temperature() {
        return told.column()
                .map(number -> number - 1)
                .or(() ->
                        Optional.of(temperatures).filter(all -> all.size() == 1).map(all -> all.get(0)));
    }

    private int temperatureOrFirst() {
        return temperature().orElseGet(() -> temperatures.get(0));
    }

    Found<DecimalSign> decimalSign() {
        List<Integer> cells = Stream.of(temperatureOrFirst()).map(joined::cell).toList();
        return told.decimalSign()
                .map(sign -> new Found<>(sign, Basis.TOLD))
                .or(() -> holdings.decimalSign(cells).map(sign -> new Found<>(sign, Basis.SEEN)))
                .orElse(new Found<>(DecimalSign.POINT, Basis.ASSUMED));
    }

    /** The unit of figures whose lines name none. */
    Found<TemperatureUnit> unit() {
        return told.unit()
                .map(unit -> new Found<>(unit, Basis.TOLD))
                .or(() -> stated().map(unit -> new Found<>(unit, Basis.STATED)))
                .orElse(new Found<>(TemperatureUnit.CELSIUS, Basis.ASSUMED));
    }

    /** By what files like it are known again. */
    Mark mark() {
        Optional<Grid.Row> heading = titled.heading().stream().findFirst();
        Grid.Row first = heading.orElseGet(() -> titled.data().rows().get(0));
        String named =
                heading.map(row -> Encoding.text(row.cells().bytes()).strip()).orElse("");
        return new Mark(named, separator.value(), first.cells().count());
    }

    private Optional<TemperatureUnit> stated() {
        return Heading.unit(titled.name(temperatureOrFirst()))
                .or(() -> titled.sayings().stream()
                        .filter(Heading::isOfUnit)
                        .flatMap(saying -> Heading.unit(saying).stream())
                        .findFirst());
    }

    /** The column that tells devices apart, which cannot be the one that is read. */
    private OptionalInt device() {
        OptionalInt found = told.device().map(holdings::naming).orElseGet(holdings::device);
        return found.isPresent() && found.getAsInt() == joined.cell(temperatureOrFirst()) ? OptionalInt.empty() : found;
    }

    Layout layout() {
        return new Layout(
                separator.value().sign(),
                decimalSign().value().sign(),
                titled.firstLine(),
                titled.instants(),
                temperatureOrFirst(),
                joined,
                holdings.offset(),
                told.unit().isPresent() ? OptionalInt.empty() : holdings.unit(),
                device(),
                unit().value());
    }
}
