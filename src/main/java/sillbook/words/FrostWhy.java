// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.Origin;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;
import sillbook.season.Today.Attention.FrostThere;
import sillbook.season.WhyFrost;
import sillbook.words.Explanation.Line;

/** What is made of the frost at a place, as it is read. */
record FrostWhy(TemperatureUnit unit) {
    private static final int DAYS_NAMED = 7;
    private static final Temperature NOTED_UNDER = Temperature.ofCelsius(0);
    private static final Temperature ACTED_ON_AT = Temperature.ofCelsius(-2);

    /** {@code froze to -9.2 C on 22 Nov, last on 26 Nov}. */
    Explanation explain(WhyFrost why) {
        FrostThere frost = why.result();
        Optional<LocalDate> lookOn = frost.lookOn();
        return new Explanation(
                (lookOn.isPresent() ? "froze to " : "down to ") + say(frost.lowest()) + " on "
                        + Days.andLast(frost.coldestOn(), frost.on(), Days::date),
                "Frost is noted under " + say(NOTED_UNDER) + " for a week. From " + say(ACTED_ON_AT)
                        + " down pots are kept cold, not warmed, and looked at for softness two weeks after the last day of it ("
                        + OriginMarks.mark(Origin.ASSUMED) + ").",
                List.of(),
                sum(why.days()),
                lookOn.map(day -> "look for softness " + Days.day(day) + " (" + OriginMarks.mark(Origin.ASSUMED) + ")")
                        .orElse("noted only"),
                List.of());
    }

    /** A line for each of the last days; earlier ones stand together. */
    private List<Line> sum(List<WhyFrost.Frosty> days) {
        int before = Math.max(0, days.size() - DAYS_NAMED);
        List<Line> lines = new ArrayList<>();
        if (before > 0) {
            String earlier = Days.span(days.get(0).day(), days.get(before - 1).day());
            lines.add(new Line(earlier, Counts.of(before, "day"), ""));
        }
        days.subList(before, days.size())
                .forEach(day -> lines.add(new Line(Days.day(day.day()), "lowest", say(day.lowest()))));
        return lines;
    }

    private String say(Temperature temperature) {
        return Temperatures.say(temperature, unit);
    }
}
