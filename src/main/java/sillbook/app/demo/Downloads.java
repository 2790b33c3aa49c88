// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sillbook.app.DayReckoning;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.store.DaySums;
import sillbook.words.line.PlaceCalled;

/** The thermometers' files that were taken in so far, by lines such as {@code import cellar.csv --place cellar}. */
final class Downloads {
    private static final Pattern LINE = Pattern.compile("import (\\S+) --place (.+)");

    private final List<Download> all = new ArrayList<>();
    private final Map<Id<Place>, NavigableMap<Long, Integer>> readings = new LinkedHashMap<>();

    List<Download> all() {
        return List.copyOf(all);
    }

    static boolean isOne(String line) {
        return LINE.matcher(line).matches();
    }

    /**
     * The journal as it is once a file is taken in.
     *
     * @throws IllegalArgumentException when the line names a place that is not there
     */
    Journal takenIn(String line, Journal journal) {
        Matcher words = LINE.matcher(line);
        if (!words.matches()) {
            throw new IllegalArgumentException("no file is taken in by: " + line);
        }
        Place place = PlaceCalled.find(journal, words.group(2)).fold(found -> found, not -> {
            throw new IllegalArgumentException(not.sentence());
        });
        Download download = new Download(place.id(), words.group(1));
        all.add(download);
        NavigableMap<Long, Integer> kept = download.readings();
        readings.computeIfAbsent(place.id(), none -> new TreeMap<>()).putAll(kept);
        Journal named = journal.with(List.of(new Edit.Put(download.source(kept))));
        return named.with(daysRead(named));
    }

    private DaysRead daysRead(Journal journal) {
        List<DayRead> days = new ArrayList<>();
        List<LastRead> last = new ArrayList<>();
        readings.forEach((place, some) -> {
            DaySums.Tally tally = new DayReckoning().days(place, basis(journal, place), days::add);
            some.forEach(tally::read);
            tally.end();
            last.add(new LastRead(
                    place,
                    Instant.ofEpochSecond(some.lastKey()),
                    new Temperature(some.lastEntry().getValue(), "")));
        });
        return DaysRead.of(days, last);
    }

    private static DaySums.Basis basis(Journal journal, Id<Place> place) {
        return new DaySums.Basis(
                journal.settings().zone(), journal.places().get(place).bridges(), 0);
    }
}
