// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.DateOrder;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.Place;
import sillbook.store.Delivery;
import sillbook.words.Heard;
import sillbook.words.logger.FormatWords;
import sillbook.words.logger.Understood;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Clock;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Dates;
import sillbook.words.logger.Understood.Form;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;
import sillbook.words.logger.Understood.TextCode;
import sillbook.words.logger.Understood.When;

/** The file of a thermometer that was looked at: what it was understood as, and its readings. */
public final class LoggerFile {
    private final Source source;
    private final Encoding encoding;
    private final Familiar familiar;
    private final Look look;
    private final Survey survey;
    private final ZoneId home;
    private final Understood understood;

    private LoggerFile(
            Source source, Encoding encoding, List<byte[]> lines, Familiar familiar, Survey survey, ZoneId home) {
        this.source = source;
        this.encoding = encoding;
        this.familiar = familiar;
        this.look = familiar.look();
        this.survey = survey;
        this.home = home;
        understood = understood(code(encoding, lines));
    }

    /**
     * Looks at a file, or says why it is none of a thermometer.
     *
     * @param told what the grower said of it, which goes before what is found
     * @param profiles of the place where its thermometer lies; what was told of files like it goes before what is found, too
     * @param home the zone in which instants are read that name none
     */
    public static Heard<LoggerFile> look(Source source, LoggerFormat told, List<LoggerProfile> profiles, ZoneId home) {
        try {
            Encoding encoding = Encoding.of(source);
            List<byte[]> lines = Grid.lines(source, encoding);
            return Familiar.at(lines, told, profiles)
                    .then(familiar -> surveyed(source, encoding, lines, familiar, home));
        } catch (NoSuchFileException nowhere) {
            return Heard.not("not there", "There is no such file.");
        } catch (IOException | UncheckedIOException failure) {
            return Heard.not("not readable", "It could not be read: " + failure.getMessage() + ".");
        }
    }

    private static Heard<LoggerFile> surveyed(
            Source source, Encoding encoding, List<byte[]> lines, Familiar familiar, ZoneId home) {
        Look look = familiar.look();
        ZoneId zone = zone(look, home).value();
        try {
            Survey survey = Survey.of(source, encoding, look.layout(), device(encoding, look), zone.getRules());
            return familiar.told()
                    .dates()
                    .flatMap(told -> Ordering.against(survey, told).map(proof -> otherwise(told, proof)))
                    .orElseGet(() -> Heard.as(new LoggerFile(source, encoding, lines, familiar, survey, home)));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Heard<LoggerFile> otherwise(DateOrder told, Proof proof) {
        return Heard.not(
                "other dates",
                "Its dates are not " + FormatWords.inFull(told) + ": line " + proof.line() + ", " + proof.written()
                        + ", proves another order. Say that, or none: then it is found.");
    }

    private static TextCode code(Encoding encoding, List<byte[]> lines) {
        boolean isLatin = encoding == Encoding.PLAIN && !lines.stream().allMatch(Encoding::isUtf8);
        return isLatin ? TextCode.LATIN_1 : encoding.code();
    }

    private static Optional<byte[]> device(Encoding encoding, Look look) {
        boolean isLatin = encoding == Encoding.PLAIN
                && look.titled().data().rows().stream()
                        .anyMatch(row -> !Encoding.isUtf8(row.cells().bytes()));
        return look.deviceMeant().map(name -> name.getBytes(isLatin ? ISO_8859_1 : UTF_8));
    }

    private static Found<ZoneId> zone(Look look, ZoneId home) {
        if (look.titled().instants().form() == Form.UNIX) {
            return new Found<>(ZoneOffset.UTC, Basis.STATED);
        }
        return look.told()
                .zone()
                .map(zone -> new Found<>(zone, Basis.TOLD))
                .or(() -> stated(look).map(zone -> new Found<ZoneId>(zone, Basis.STATED)))
                .orElse(new Found<>(home, Basis.ASSUMED));
    }

    private static Optional<ZoneOffset> stated(Look look) {
        Titled titled = look.titled();
        Stream<String> names = Stream.of(
                titled.name(titled.instants().date()),
                titled.name(titled.instants().time()));
        Stream<String> sayings = titled.sayings().stream().filter(Heading::isOfClock);
        return Stream.concat(names, sayings)
                .flatMap(text -> Heading.zone(text).stream())
                .findFirst();
    }

    private Understood understood(TextCode code) {
        Titled titled = look.titled();
        Dates dates = dates();
        Optional<String> device = look.deviceMeant()
                .or(() -> Optional.of(survey.devices())
                        .filter(all -> all.size() == 1)
                        .map(all -> all.get(0)));
        return new Understood(
                code,
                titled.before().size(),
                titled.hasHeading(),
                look.separator(),
                look.decimalSign(),
                when(titled),
                dates,
                clock(dates),
                look.temperature().map(titled::column),
                look.temperatures().stream().map(titled::column).toList(),
                look.unit(),
                look.layout().unit().isPresent(),
                survey.devices(),
                device,
                toldBefore(dates));
    }

    /** What was told before of the order of dates answers only what the file itself leaves open. */
    private Dates dates() {
        if (look.titled().instants().form() == Form.UNIX) {
            return new Dates(Optional.empty(), Optional.empty(), Set.of());
        }
        Dates found = Ordering.of(survey, familiar.told().dates());
        return familiar.before()
                .dates()
                .filter(order -> found.order().isEmpty() && found.possible().contains(order))
                .map(order -> Ordering.of(survey, Optional.of(order)))
                .orElse(found);
    }

    private LoggerFormat toldBefore(Dates dates) {
        boolean isOrderTold =
                dates.order().filter(order -> order.basis() == Basis.TOLD).isPresent();
        LoggerFormat before = familiar.before();
        return isOrderTold ? before : before.without(LoggerFormat.OPEN.withDates(DateOrder.YEAR_MONTH_DAY));
    }

    private static When when(Titled titled) {
        Instants instants = titled.instants();
        List<Column> columns = instants.form() == Form.APART
                ? List.of(titled.column(instants.date()), titled.column(instants.time()))
                : List.of(titled.column(instants.date()));
        return new When(instants.form(), columns);
    }

    /** A clock that goes through an hour which its zone leaves out never changes: it keeps the offset it began with. */
    private Clock clock(Dates dates) {
        Found<ZoneId> zone = zone(look, home);
        Optional<Evidence> behind = dates.order()
                .flatMap(order -> survey.evidence().stream()
                        .filter(one -> one.order() == order.value() && one.staysBehind())
                        .findFirst());
        ZoneId kept = behind.<ZoneId>map(one -> zone.value().getRules().getOffset(one.firstTime()))
                .orElse(zone.value());
        return new Clock(
                new Found<>(kept, zone.basis()), survey.rowsNameZone(), survey.isHalfDays(), behind.isPresent());
    }

    public Understood understood() {
        return understood;
    }

    /** How many lines have an instant, of the device that is meant: about as many as it has readings. */
    public long lines() {
        return survey.lines();
    }

    /** What is delivered with its readings, which are gone through once; what was told of it is kept with them. */
    public Delivery delivery(Id<Place> place, String name, LoggerFeed readings, Ids ids) {
        return new Delivery(place, name, source, readings, familiar.kept(place, ids));
    }

    /**
     * Its readings, from the first again.
     *
     * @throws IllegalStateException while a question is open
     */
    public LoggerFeed feed() {
        return feed(Instant.MAX);
    }

    /**
     * The same.
     *
     * @param now the moment it is read at; readings of a much later one are suspicious
     * @throws IllegalStateException while a question is open
     */
    public LoggerFeed feed(Instant now) {
        if (!understood.questions().isEmpty()) {
            throw new IllegalStateException("not to be read before it is said: " + understood.questions());
        }
        LocalClock clock = new LocalClock(understood.clock().zone().value().getRules(), survey.usualStep());
        try {
            return new LoggerFeed(
                    new Lines(encoding.open(source)),
                    new LoggerFeed.Reading(
                            look.layout(),
                            device(encoding, look),
                            understood.dates().order().map(Found::value).orElse(DateOrder.YEAR_MONTH_DAY),
                            understood.clock().zone().basis() != Basis.TOLD,
                            clock,
                            new Suspicion(look.told().suspicious(), now.getEpochSecond()),
                            home));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
