// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.handbook.Figure;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Band;
import sillbook.model.Kind;
import sillbook.model.Settings;
import sillbook.model.Temperature;
import sillbook.model.Wish;
import sillbook.words.SourceWords;
import sillbook.words.Temperatures;

/**
 * The looks at the pots of a dated wish, some two weeks, one week and three days before it, each with what can still be done. That it
 * is looked at on these days is common practice; by how many days a lever moves the flowers is not known to be published, and so it is
 * not said.
 */
public record WishChecks(Handbook handbook, Settings settings) {
    private static final int TWO_WEEKS = 14;
    private static final int ONE_WEEK = 7;
    private static final int THREE_DAYS = 3;

    /** Not below 40 F, in C, and for three days at most: a florists' trade guide of 2014. */
    private static final double HELD_AT = 4.4;

    private static final String TRADE_GUIDE = "a florists' trade guide of 2014";
    private static final String UNKNOWN = "by how many days is unknown";
    private static final String NOT_KNOWN = "how warm is unknown";

    /** Those of which the day has not gone by; none of a wish for every day. */
    public List<WishCheck> of(Wish wish, LocalDate today) {
        return wish.asks().isEveryDay()
                ? List.of()
                : all(wish.from(), wish.kind().orElse(Handbook.HARDY)).stream()
                        .filter(check -> !check.day().isBefore(today))
                        .toList();
    }

    private List<WishCheck> all(LocalDate day, Kind kind) {
        return List.of(
                new WishCheck(
                        day.minusDays(TWO_WEEKS),
                        "buds above the leaves?",
                        "warmer, " + said(kind, FigureName.WARM_ROOM_BAND, this::band) + "; " + UNKNOWN,
                        "cooler, " + said(kind, FigureName.COOL_ROOM_BAND, this::band) + "; " + UNKNOWN,
                        sources(kind, FigureName.WARM_ROOM_BAND, FigureName.COOL_ROOM_BAND)),
                new WishCheck(
                        day.minusDays(ONE_WEEK),
                        "colour in the buds?",
                        "warmer, at most " + said(kind, FigureName.BLOOM_WARMTH, this::most) + "; " + UNKNOWN,
                        "shade, out of direct sun; " + UNKNOWN,
                        sources(kind, FigureName.BLOOM_WARMTH)),
                new WishCheck(
                        day.minusDays(THREE_DAYS),
                        "first flower open?",
                        "a spare pot; what warmth does now is unknown",
                        "hold it cold, not below " + say(HELD_AT) + ", for 3 days at most",
                        TRADE_GUIDE));
    }

    private String said(Kind kind, FigureName name, Function<Figure, String> say) {
        return handbook.figure(kind, name).map(say).orElse(NOT_KNOWN);
    }

    private String band(Figure figure) {
        return Temperatures.fromTo(Band.ofCelsius(figure.low(), figure.high()), settings.temperatures());
    }

    private String most(Figure figure) {
        return say(figure.high());
    }

    private String say(double celsius) {
        return Temperatures.say(Temperature.ofCelsius(celsius), settings.temperatures());
    }

    private String sources(Kind kind, FigureName... names) {
        List<String> keys = Stream.of(names)
                .map(name -> handbook.figure(kind, name))
                .flatMap(Optional::stream)
                .flatMap(figure -> figure.sources().stream())
                .toList();
        return keys.isEmpty() ? "common practice" : new SourceWords(handbook, settings).names(keys);
    }
}
