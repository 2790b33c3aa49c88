// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.Job;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceNow;
import sillbook.season.WaitingBulbs;
import sillbook.words.ClimateWords;
import sillbook.words.ColdDayWords;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.Temperatures;
import sillbook.words.Terms;

/**
 * Places as plain lines.
 *
 * @param now the moment since which it is said how long ago something was read
 */
record PlaceText(Journal journal, Instant now) {
    private static final String INDENT = "  ";

    /** What stands there; and where it was ever read, indented, how warm it has been. */
    Stream<String> lines(PlaceNow now, PlaceClimate climate) {
        List<String> warmth = new ClimateWords(journal.settings(), this.now).all(climate);
        String said = String.join("; ", warmth);
        return climate.isRead() ? Stream.of(line(now), INDENT + said) : Stream.of(line(now) + "; " + said);
    }

    /** {@code cellar: cold, 2 to 9 C; 12 of 20 pots, 10 in two weeks; next round Sat 16 Jan; H5-H22}. */
    private String line(PlaceNow now) {
        List<String> facts = new ArrayList<>();
        facts.add(serves(now.place()));
        facts.add(fullness(now));
        if (!now.waiting().isEmpty()) {
            facts.add(now.waiting().stream().mapToInt(WaitingBulbs::bulbs).sum() + " dry bulbs");
        }
        now.round().map(Job.Round::on).ifPresent(day -> facts.add(round(day)));
        if (!now.pots().isEmpty()) {
            facts.add(new PotNames(journal).labels(now.pots()));
        }
        return now.place().name() + ": " + String.join("; ", facts);
    }

    /** {@code next round Sat 16 Jan}, {@code round due today}, {@code round due since Tue 15 Sep}. */
    private String round(LocalDate on) {
        LocalDate today = LocalDate.ofInstant(now, journal.settings().zone());
        if (on.equals(today)) {
            return "round due today";
        }
        return (on.isBefore(today) ? "round due since " : "next round ") + Days.day(on);
    }

    private String serves(Place place) {
        String usual = place.usual()
                .map(band -> ", " + Temperatures.fromTo(band, journal.settings().temperatures()))
                .orElse("");
        String days = place.coldDays().isAllYear() ? "" : ", cold " + ColdDayWords.say(place.coldDays());
        return Terms.STAGES.say(place.serves()) + usual + days;
    }

    private static String fullness(PlaceNow now) {
        int standing = now.pots().size();
        String today = now.place()
                .room()
                .map(room -> standing + " of " + room + " pots")
                .orElse(Counts.of(standing, "pot"));
        int later = now.inTwoWeeks().size();
        String kept = now.kept().isEmpty() ? "" : " (" + now.kept().size() + " for want of room elsewhere)";
        return standing == later && kept.isEmpty() ? today : today + ", " + later + " in two weeks" + kept;
    }
}
