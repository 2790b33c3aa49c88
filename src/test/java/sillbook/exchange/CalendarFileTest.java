// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Value;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.app.demo.Demo;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.PlaceNow;
import sillbook.season.Today;

/**
 * The calendar's file, read back by ical4j, which shares no code with the library that writes it. What an event must have is RFC 5545's:
 * 3.6.1 (DTSTAMP and UID), 3.8.7.4 (SEQUENCE), 3.8.1.11 (STATUS), 3.6.6 (a display alarm has TRIGGER and DESCRIPTION).
 */
class CalendarFileTest {
    private static final Instant NOW = Instant.parse("2027-01-12T09:00:00.123Z");
    private static final Instant LATER = NOW.plusSeconds(3600);
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final CalendarEntry MOVE = new CalendarEntry(
            "a-bring-in@sillbook", LocalDate.of(2027, 1, 18), "T1 'Tuesday Coat' x6: ready", "to porch");
    private static final CalendarEntry ROUND =
            new CalendarEntry("b-check@sillbook", LocalDate.of(2027, 1, 22), "Round of the cellar, 20 pots", "");

    private static Calendar readBack(String text) {
        try {
            return new CalendarBuilder().build(new StringReader(text));
        } catch (IOException | ParserException wrong) {
            throw new AssertionError(text, wrong);
        }
    }

    private static List<VEvent> events(String text) {
        return readBack(text).getComponents("VEVENT");
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).map(Property::getValue).orElse("");
    }

    /** Each event's days and numbers, by what it says. */
    private static Map<String, String> told(String text) {
        return events(text).stream()
                .collect(Collectors.toMap(
                        event -> value(event, "UID"),
                        event -> value(event, "DTSTART") + " " + value(event, "SEQUENCE") + " " + value(event, "STATUS")
                                + " " + value(event, "DTSTAMP"),
                        (one, other) -> one + " twice " + other,
                        TreeMap::new));
    }

    private static CalendarFile again(CalendarFile file) {
        return CalendarFile.parse(file.text()).orElseThrow();
    }

    @Test
    void everyComingJobOfTheDemoIsAnAllDayEventWithAnAlarm() {
        Journal journal = Demo.journal();
        Outlook outlook = Outlook.of(journal, Handbook.standard(), TODAY);
        List<CalendarEntry> coming = ComingJobs.of(journal, outlook);
        Calendar calendar =
                readBack(CalendarFile.empty().with(coming, NOW, TODAY).text());
        List<VEvent> events = calendar.getComponents("VEVENT");

        assertThat(calendar.validate().hasErrors()).isFalse();
        assertThat(events)
                .hasSize(jobs(outlook))
                .extracting(event -> value(event, "UID"))
                .doesNotHaveDuplicates();
        assertThat(events).allSatisfy(event -> {
            assertThat(event.getDateTimeStart().getParameter("VALUE")).contains(Value.DATE);
            assertThat(event.getAlarms()).hasSize(1);
            VAlarm alarm = event.getAlarms().get(0);
            assertThat(alarm.getProperty("ACTION").map(Property::getValue)).contains("DISPLAY");
            assertThat(alarm.getProperty("TRIGGER").map(Property::getValue)).contains("PT9H");
            assertThat(alarm.getProperty("DESCRIPTION").map(Property::getValue)).contains(value(event, "SUMMARY"));
        });
        assertThat(days(events)).isEqualTo(days(outlook));
    }

    private static int jobs(Outlook outlook) {
        return days(outlook).size();
    }

    /** The days of the events, in order. */
    private static List<String> days(List<VEvent> events) {
        return events.stream().map(event -> value(event, "DTSTART")).sorted().toList();
    }

    /** The days on which the season says that jobs fall due, in order, as RFC 5545 writes them. */
    private static List<String> days(Outlook outlook) {
        Today today = outlook.today();
        List<LocalDate> days = new java.util.ArrayList<>();
        for (List<Job.OfPots> some : List.of(today.late(), today.ready(), today.due(), today.soon(), today.later())) {
            some.forEach(job -> days.add(job.on()));
        }
        outlook.places().stream()
                .map(PlaceNow::round)
                .flatMap(round -> round.stream())
                .forEach(round -> days.add(round.on()));
        return days.stream()
                .map(day -> day.toString().replace("-", ""))
                .sorted()
                .toList();
    }

    @Test
    void exportedTwiceItIsTheSameToTheLetter() {
        CalendarFile first = CalendarFile.empty().with(List.of(MOVE, ROUND), NOW, TODAY);

        assertThat(again(first)
                        .with(List.of(ROUND, MOVE), LATER, TODAY.plusDays(1))
                        .text())
                .isEqualTo(first.text());
    }

    @Test
    void onlyWhatChangedIsRevised() {
        CalendarFile first = CalendarFile.empty().with(List.of(MOVE, ROUND), NOW, TODAY);
        CalendarEntry putOff = new CalendarEntry(MOVE.uid(), MOVE.day().plusDays(4), MOVE.says(), MOVE.more());

        assertThat(told(again(first).with(List.of(putOff, ROUND), LATER, TODAY).text()))
                .containsExactly(
                        Map.entry(MOVE.uid(), "20270122 1 CONFIRMED 20270112T100000Z"),
                        Map.entry(ROUND.uid(), "20270122 0 CONFIRMED 20270112T090000Z"));
    }

    @Test
    void aJobThatWentAwayIsCancelledWithoutItsAlarmAndComesBackWhenTheJobDoes() {
        CalendarFile first = CalendarFile.empty().with(List.of(MOVE, ROUND), NOW, TODAY);
        CalendarFile without = again(first).with(List.of(ROUND), LATER, TODAY);

        assertThat(told(without.text())).containsEntry(MOVE.uid(), "20270118 1 CANCELLED 20270112T100000Z");
        assertThat(events(without.text()))
                .filteredOn(event -> value(event, "STATUS").equals("CANCELLED"))
                .singleElement()
                .satisfies(event -> assertThat(event.getAlarms()).isEmpty());
        assertThat(without.jobs()).isOne();
        assertThat(again(without)
                        .with(List.of(ROUND), LATER.plusSeconds(60), TODAY)
                        .text())
                .isEqualTo(without.text());
        assertThat(told(again(without).with(List.of(MOVE), LATER, TODAY).text()))
                .containsEntry(MOVE.uid(), "20270118 2 CONFIRMED 20270112T100000Z");
    }

    @Test
    void whatWasCancelledIsForgottenTwoMonthsAfterItsDay() {
        CalendarFile gone = CalendarFile.empty().with(List.of(MOVE), NOW, TODAY).with(List.of(), LATER, TODAY);

        assertThat(told(gone.with(List.of(), LATER, MOVE.day().plusDays(60)).text()))
                .containsOnlyKeys(MOVE.uid());
        assertThat(told(gone.with(List.of(), LATER, MOVE.day().plusDays(61)).text()))
                .isEmpty();
    }

    @Test
    void anEventThatSomebodyElsePutThereIsNotKept() {
        String text = CalendarFile.empty()
                .with(List.of(MOVE), NOW, TODAY)
                .text()
                .replace(
                        "BEGIN:VEVENT",
                        "BEGIN:VEVENT\r\nUID:mine\r\nDTSTAMP:20270101T000000Z\r\nEND:VEVENT\r\nBEGIN:VEVENT");

        assertThat(told(CalendarFile.parse(text).orElseThrow().text())).containsOnlyKeys(MOVE.uid());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "dear diary", "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//X//Y//EN\r\nEND:VCALENDAR\r\n"})
    void anotherFileIsNone(String text) {
        assertThat(CalendarFile.parse(text)).isEmpty();
    }

    @Test
    void longAndForeignWordsComeBackAsTheyWere() {
        CalendarEntry entry = new CalendarEntry(
                "c-check@sillbook",
                TODAY,
                "Round of the " + "Gew\u00e4chshaus, hinten; ".repeat(9) + "\u5317",
                "a\\b; c, d");
        String text = CalendarFile.empty().with(List.of(entry), NOW, TODAY).text();

        assertThat(events(text)).singleElement().satisfies(event -> {
            assertThat(value(event, "SUMMARY")).isEqualTo(entry.says());
            assertThat(value(event, "DESCRIPTION")).isEqualTo(entry.more());
        });
        assertThat(text.split("\r\n", -1))
                .allSatisfy(line -> assertThat(line.getBytes(java.nio.charset.StandardCharsets.UTF_8))
                        .hasSizeLessThanOrEqualTo(75));
        assertThat(CalendarFile.parse(text).orElseThrow().text()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Pacific/Kiritimati", "Pacific/Pago_Pago", "America/Havana"})
    void aDayIsTheSameDayInEveryZone(String zone) {
        TimeZone home = TimeZone.getDefault();
        Locale language = Locale.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            String text = CalendarFile.empty().with(List.of(MOVE), NOW, TODAY).text();

            assertThat(told(text)).containsEntry(MOVE.uid(), "20270118 0 CONFIRMED 20270112T090000Z");
            assertThat(again(CalendarFile.parse(text).orElseThrow()).text()).isEqualTo(text);
        } finally {
            TimeZone.setDefault(home);
            Locale.setDefault(language);
        }
    }
}
