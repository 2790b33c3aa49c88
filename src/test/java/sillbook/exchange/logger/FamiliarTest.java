// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.model.DateOrder;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.LoggerProfile;
import sillbook.model.LoggerProfile.Mark;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Heard;
import sillbook.words.logger.Understood;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Question;

class FamiliarTest {
    private static final Id<Place> CELLAR = new Id<>(2, 1);
    private static final Id<LoggerProfile> KEPT = new Id<>(9, 9);
    private static final Ids IDS = () -> 9;
    private static final LoggerFormat DAY_FIRST = LoggerFormat.OPEN.withDates(DateOrder.DAY_MONTH_YEAR);
    private static final String UNCLEAR = "box 7\nDate,Temp C\n3/11/2026 07:00,5.5\n4/11/2026 07:00,5.0\n";
    private static final Mark MARK = new Mark("Date,Temp C", Separator.COMMA, 2);
    private static final String TWO_BOXES = "Box;Date;Temp\nA;2026-11-13 07:00;4.5\nB;2026-11-13 07:00;5.5\n";
    private static final Mark BOXES = new Mark("Box;Date;Temp", Separator.SEMICOLON, 3);

    private static LoggerProfile profile(Mark mark, LoggerFormat format) {
        return new LoggerProfile(KEPT, CELLAR, mark, format);
    }

    private static LoggerFile look(String text, LoggerFormat told, LoggerProfile... profiles) {
        Heard<LoggerFile> heard =
                LoggerFile.look(Source.of(text.getBytes(UTF_8)), told, List.of(profiles), ZoneOffset.UTC);
        return heard.value().orElseThrow();
    }

    private static List<Edit> kept(LoggerFile file) {
        try (LoggerFeed feed = file.feed()) {
            return file.delivery(CELLAR, "box.csv", feed, IDS).beside();
        }
    }

    private static Optional<DateOrder> order(LoggerFile file) {
        return file.understood().dates().order().map(Understood.Found::value);
    }

    @Test
    void whatIsToldIsKeptUnderTheHeading() {
        assertThat(kept(look(UNCLEAR, DAY_FIRST))).containsExactly(new Edit.Put(profile(MARK, DAY_FIRST)));
    }

    @Test
    void withoutAHeadingItIsKeptUnderTheShape() {
        String bare = "3/11/2026,07:00,5.5\n4/11/2026,07:00,5.0\n";
        LoggerProfile kept = profile(new Mark("", Separator.COMMA, 3), DAY_FIRST);

        assertThat(kept(look(bare, DAY_FIRST))).containsExactly(new Edit.Put(kept));
        assertThat(order(look(bare, LoggerFormat.OPEN, kept))).contains(DateOrder.DAY_MONTH_YEAR);
        assertThat(order(look(bare.replace(",07", ",1,07"), LoggerFormat.OPEN, kept)))
                .isEmpty();
    }

    @Test
    void whereNothingIsToldNothingIsKept() {
        LoggerFile file = look(UNCLEAR, LoggerFormat.OPEN, profile(MARK, DAY_FIRST));

        assertThat(order(file)).contains(DateOrder.DAY_MONTH_YEAR);
        assertThat(file.understood().toldBefore()).isEqualTo(DAY_FIRST);
        assertThat(kept(file)).isEmpty();
        assertThat(kept(look(UNCLEAR, DAY_FIRST, profile(MARK, DAY_FIRST)))).isEmpty();
    }

    @Test
    void whatIsToldNowGoesFirstAndIsAddedToWhatIsKept() {
        LoggerFormat now = LoggerFormat.OPEN
                .withDates(DateOrder.MONTH_DAY_YEAR)
                .withUnit(TemperatureUnit.FAHRENHEIT)
                .withSuspicious(Set.of(0));
        LoggerFormat before = DAY_FIRST.withZone(ZoneOffset.ofHours(1)).withSuspicious(Set.of(25_500));
        LoggerFile file = look(UNCLEAR, now, profile(MARK, before));

        assertThat(order(file)).contains(DateOrder.MONTH_DAY_YEAR);
        assertThat(file.understood().toldBefore()).isEqualTo(LoggerFormat.OPEN.withZone(ZoneOffset.ofHours(1)));
        assertThat(kept(file)).containsExactly(new Edit.Put(profile(MARK, now.withZone(ZoneOffset.ofHours(1)))));
    }

    @Test
    void anotherHeadingIsAnotherFile() {
        LoggerProfile other = profile(new Mark("Date,Temp F", Separator.COMMA, 2), DAY_FIRST);

        assertThat(look(UNCLEAR, LoggerFormat.OPEN, other).understood().questions())
                .containsExactly(Question.DATES);
    }

    @Test
    void aLineThatProvesAnOrderGoesBeforeWhatWasToldOfEarlierFiles() {
        LoggerFile file = look(UNCLEAR + "11/13/2026 07:00,5.0\n", LoggerFormat.OPEN, profile(MARK, DAY_FIRST));

        assertThat(order(file)).contains(DateOrder.MONTH_DAY_YEAR);
        assertThat(file.understood().toldBefore()).isEqualTo(LoggerFormat.OPEN);
    }

    @Test
    void instantsThatAreNoDatesNeedNoOrder() {
        String seconds = "Time,Temp C\n"
                + Stream.iterate(1_793_000_000L, at -> at + 3600)
                        .limit(20)
                        .map(at -> at + ",5.5\n")
                        .reduce("", String::concat);
        LoggerProfile told = profile(new Mark("Time,Temp C", Separator.COMMA, 2), DAY_FIRST);

        assertThat(look(seconds, LoggerFormat.OPEN, told).understood().toldBefore())
                .isEqualTo(LoggerFormat.OPEN);
    }

    @Test
    void theDeviceIsKnownAgainAndAskedForWhereItIsGone() {
        LoggerFormat ofB = LoggerFormat.OPEN.withDevice("B").withUnit(TemperatureUnit.FAHRENHEIT);
        Understood known =
                look(TWO_BOXES, LoggerFormat.OPEN, profile(BOXES, ofB)).understood();
        Understood strange = look(TWO_BOXES.replace("\nB", "\nC"), LoggerFormat.OPEN, profile(BOXES, ofB))
                .understood();

        assertThat(known.device()).contains("B");
        assertThat(known.questions()).isEmpty();
        assertThat(strange.questions()).containsExactly(Question.DEVICE);
        assertThat(strange.unit().basis()).isEqualTo(Basis.TOLD);
        assertThat(strange.toldBefore()).isEqualTo(LoggerFormat.OPEN.withUnit(TemperatureUnit.FAHRENHEIT));
    }
}
