// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.Optional;
import sillbook.model.Settings;
import sillbook.model.Temperature;
import sillbook.season.Condition;
import sillbook.season.LengthGiven;
import sillbook.season.LengthGiven.Part;
import sillbook.words.Explanation.Line;

/** What the conditions of a pot do to a length that was learnt, in words. */
record ConditionWords(Settings settings) {
    private static final double DAYS_IN_MONTH = 30;

    /** In days; less is not worth a word. */
    private static final double LEAST_SAID = 0.1;

    /** {@code 12 weeks of cold, where your pots had 14: 3 days longer}; a line for each that is known of any. */
    List<Line> lines(LengthGiven given) {
        return given.parts().stream().map(this::line).toList();
    }

    private Line line(Part part) {
        Optional<Double> here = part.here();
        Optional<Double> usual = part.usual();
        if (here.isPresent() && usual.isPresent()) {
            return known(part, here.get(), usual.get());
        }
        return new Line(
                named(part.condition()), here.isPresent() ? "not known of those" : "not known here: as with those", "");
    }

    private Line known(Part part, double here, double usual) {
        return switch (part.condition()) {
            case COLD ->
                new Line(Weeks.say(here) + " of cold", "where those had " + Decimal.say(usual, 1), comes(part));
            case ROOM -> new Line("a room of " + degrees(here), "where those had " + degrees(usual), comes(part));
            case SEASON -> new Line("in the season", season(here - usual), comes(part));
        };
    }

    private String degrees(double celsius) {
        return Temperatures.say(Temperature.ofCelsius(celsius), settings.temperatures());
    }

    private static String season(double months) {
        long days = Math.round(Math.abs(months) * DAYS_IN_MONTH);
        return days == 0 ? "as those" : Counts.of(days, "day") + (months > 0 ? " later" : " earlier") + " than those";
    }

    private static String comes(Part part) {
        String days = Decimal.say(Math.abs(part.days()), 1);
        if (Math.abs(part.days()) < LEAST_SAID) {
            return "no difference";
        }
        return days + (days.equals("1") ? " day " : " days ") + (part.days() > 0 ? "longer" : "shorter");
    }

    private static String named(Condition condition) {
        return switch (condition) {
            case COLD -> "weeks of cold";
            case ROOM -> "its room";
            case SEASON -> "the season";
        };
    }
}
