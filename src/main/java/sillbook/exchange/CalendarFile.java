// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.DateStart;
import biweekly.property.LastModified;
import biweekly.property.Status;
import biweekly.property.Transparency;
import biweekly.property.Trigger;
import biweekly.property.ValuedProperty;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Coming jobs as an iCalendar file (RFC 5545): an event a job, all day, with an alarm in the morning. The file that was written last
 * is the record of what was told: what is the same stays to the letter, what changed gets the next number in its sequence, and what
 * went away is cancelled, because an event that is only missing stays in the calendars that have it.
 */
public final class CalendarFile {
    private static final String PRODUCT = "-//Sillbook//Sillbook//EN";
    private static final String CANCELLED = "CANCELLED";
    /** RFC 5545, 3.1. */
    private static final int LINE_OCTETS = 75;

    private static final int NOON = 12;
    private static final int ALARM_HOUR = 9;

    private final Map<String, CalendarRecord> records;

    private CalendarFile(Map<String, CalendarRecord> records) {
        this.records = records;
    }

    /** One in which nothing was ever told. */
    public static CalendarFile empty() {
        return new CalendarFile(Map.of());
    }

    /** Reads one that was written here; empty when the text is none. */
    public static Optional<CalendarFile> parse(String text) {
        return Optional.ofNullable(Biweekly.parse(text).first())
                .filter(calendar -> text(calendar.getProductId()).equals(PRODUCT))
                .map(CalendarFile::of);
    }

    private static CalendarFile of(ICalendar calendar) {
        Map<String, CalendarRecord> records = new LinkedHashMap<>();
        for (VEvent event : calendar.getEvents()) {
            record(event).ifPresent(record -> records.put(record.entry().uid(), record));
        }
        return new CalendarFile(records);
    }

    /** Empty for an event that somebody else put into the file. */
    private static Optional<CalendarRecord> record(VEvent event) {
        Optional<ICalDate> start = value(event.getDateStart());
        Optional<Integer> sequence = value(event.getSequence());
        Optional<Date> revised = value(event.getLastModified());
        if (start.isEmpty() || sequence.isEmpty() || revised.isEmpty()) {
            return Optional.empty();
        }
        CalendarEntry entry = new CalendarEntry(
                text(event.getUid()),
                day(start.get().getRawComponents()),
                text(event.getSummary()),
                text(event.getDescription()));
        return Optional.of(new CalendarRecord(
                entry,
                sequence.get(),
                revised.get().toInstant(),
                text(event.getStatus()).equals(CANCELLED)));
    }

    private static LocalDate day(DateTimeComponents date) {
        return LocalDate.of(date.getYear(), date.getMonth(), date.getDate());
    }

    /** What a property says; empty where there is none. */
    private static <T> Optional<T> value(@Nullable ValuedProperty<T> property) {
        return Optional.ofNullable(ValuedProperty.getValue(property));
    }

    private static String text(@Nullable ValuedProperty<String> property) {
        return value(property).orElse("");
    }

    /**
     * The file brought up to what is coming now.
     *
     * @param now the moment, which what changed is marked with
     * @param today the journal's day
     */
    public CalendarFile with(List<CalendarEntry> coming, Instant now, LocalDate today) {
        Instant second = now.truncatedTo(ChronoUnit.SECONDS);
        Map<String, CalendarRecord> revised = new LinkedHashMap<>();
        records.forEach((uid, record) -> revised.put(uid, record.cancelled(second)));
        for (CalendarEntry entry : coming) {
            CalendarRecord known = records.get(entry.uid());
            revised.put(
                    entry.uid(), known == null ? CalendarRecord.first(entry, second) : known.revised(entry, second));
        }
        revised.values().removeIf(record -> record.isForgotten(today));
        return new CalendarFile(revised);
    }

    /** How many jobs it tells, those cancelled left aside. */
    public int jobs() {
        return (int) records.values().stream()
                .filter(record -> !record.isCancelled())
                .count();
    }

    /** The file's text. */
    public String text() {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        records.values().stream()
                .sorted(Comparator.comparing(CalendarRecord::day)
                        .thenComparing(record -> record.entry().uid()))
                .forEach(record -> calendar.addEvent(event(record)));
        return written(calendar);
    }

    private String written(ICalendar calendar) {
        StringWriter out = new StringWriter();
        try (ICalWriter writer = new ICalWriter(out, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(LINE_OCTETS / widest());
            writer.write(calendar);
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory could not be written", impossible);
        }
        return out.toString();
    }

    /** The most octets of UTF-8 that a character of the text has; the library counts characters, the standard octets. */
    private int widest() {
        return records.values().stream()
                .map(CalendarRecord::entry)
                .flatMapToInt(entry -> (entry.says() + entry.more()).chars())
                .map(c -> c < 0x80 ? 1 : c < 0x800 || Character.isSurrogate((char) c) ? 2 : 3)
                .max()
                .orElse(1);
    }

    private static VEvent event(CalendarRecord record) {
        CalendarEntry entry = record.entry();
        Date revised = Date.from(record.revisedAt());
        VEvent event = new VEvent();
        event.setUid(entry.uid());
        event.setDateTimeStamp(revised);
        event.setLastModified(new LastModified(revised));
        event.setSequence(record.sequence());
        event.setDateStart(new DateStart(date(entry.day())));
        event.setSummary(entry.says());
        if (!entry.more().isEmpty()) {
            event.setDescription(entry.more());
        }
        event.setTransparency(Transparency.transparent());
        event.setStatus(record.isCancelled() ? Status.cancelled() : Status.confirmed());
        if (!record.isCancelled()) {
            event.addAlarm(VAlarm.display(inTheMorning(), entry.says()));
        }
        return event;
    }

    /** A day without a time. The library writes it by the machine's zone, in which noon is on every day. */
    private static ICalDate date(LocalDate day) {
        DateTimeComponents noon =
                new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth(), NOON, 0, 0, false);
        return new ICalDate(noon, false);
    }

    private static Trigger inTheMorning() {
        return new Trigger(Duration.builder().hours(ALARM_HOUR).build(), Related.START);
    }
}
