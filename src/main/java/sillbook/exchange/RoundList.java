// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.PlaceNow;
import sillbook.season.PotNow;
import sillbook.season.WaitingBulbs;
import sillbook.words.Lengths;
import sillbook.words.PotNames;
import sillbook.words.RoundWords;

/**
 * What is to be looked at in one place, to be carried there and brought back.
 *
 * @param round the next round; empty where none is ever asked for, or the daily care has it
 * @param rows a pot each, the pots of a batch together
 * @param bulbs those that wait there dry
 */
public record RoundList(
        Journal journal,
        LocalDate day,
        Place place,
        Optional<Job.Round> round,
        List<Row> rows,
        List<WaitingBulbs> bulbs) {
    private static final List<String> SEEN = List.of("dry", "mould");

    public RoundList {
        rows = List.copyOf(rows);
        bulbs = List.copyOf(bulbs);
    }

    /**
     * A pot, or those of a batch that stand there.
     *
     * @param first the one that speaks for all
     * @param looked the day of its last check
     * @param lastTime what that check saw, in a few words; may be empty
     */
    public record Row(List<Id<Pot>> pots, PotNow first, Optional<LocalDate> looked, String lastTime) {
        public Row {
            pots = List.copyOf(pots);
        }
    }

    /** The list of a place as it stands today. */
    public static RoundList of(Journal journal, Outlook outlook, Place place) {
        PlaceNow now = outlook.places().stream()
                .filter(there -> there.place().equals(place))
                .findFirst()
                .orElseThrow();
        RoundWords words = new RoundWords(journal);
        List<Row> rows = words.rows(now.pots()).stream()
                .map(pots -> row(pots, words, outlook))
                .toList();
        return new RoundList(journal, outlook.day(), place, now.round(), rows, outlook.dryAt(place.id()));
    }

    private static Row row(List<Id<Pot>> pots, RoundWords words, Outlook outlook) {
        Id<Pot> first = pots.get(0);
        Optional<LocalDate> looked = words.lastCheck(first).map(Event::day).map(Day::likely);
        return new Row(pots, outlook.pot(first), looked, words.lastTime(pots));
    }

    private String variety(WaitingBulbs dry) {
        return journal.varieties().get(dry.purchase().variety()).name();
    }

    /** How many pots stand there. */
    public int pots() {
        return rows.stream().mapToInt(row -> row.pots().size()).sum();
    }

    /** The line to write where all was well; more of it follows a comma. */
    public String line() {
        return RoundWords.line(place, List.of());
    }

    /** How the line might go on, told with the labels of pots that stand there. */
    public String example() {
        PotNames names = new PotNames(journal);
        List<String> seen = new ArrayList<>(SEEN);
        seen.add("6 " + Lengths.unit(journal.settings().lengths()));
        List<String> exceptions = new ArrayList<>();
        for (int at = 0; at < Math.min(rows.size(), seen.size()); at++) {
            Row row = rows.get(at);
            exceptions.add(names.label(row.pots().get(0)) + " "
                    + seen(row.first().life().pot().way(), at, seen));
        }
        if (rows.isEmpty()) {
            bulbs.stream().limit(1).forEach(dry -> exceptions.add(RoundWords.bulbs(variety(dry)) + " soft"));
        }
        return RoundWords.line(place, exceptions);
    }

    /** In the words of its way: over water none is dry, and in a glass a length alone would be the shoot's. */
    private static String seen(Way way, int at, List<String> seen) {
        if (way.isOverWater() && at == 0) {
            return "water low";
        }
        return way == Way.GLASS && at == seen.size() - 1 ? "roots " + seen.get(at) : seen.get(at);
    }
}
