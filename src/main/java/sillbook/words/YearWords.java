// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Journal;
import sillbook.season.Bloom;
import sillbook.season.PotLife;
import sillbook.season.Years.Year;

/** The winters of a plant that lives on. */
public record YearWords(Journal journal) {

    /** {@code winter 3}; empty in the first. */
    public static String which(PotLife life) {
        int number = life.years().number();
        return number == 1 ? "" : "winter " + number;
    }

    /** {@code 2026-27: in flower 10 Jan to 10 Feb, outcome 4 of 5}: those that are over, the first first. */
    public List<String> past(PotLife life) {
        return life.years().past().stream().map(year -> say(life, year)).toList();
    }

    private String say(PotLife life, Year year) {
        OutcomeWords outcomes = new OutcomeWords(journal);
        Stream<String> scores = journal.outcomesOf(life.pot().id()).stream()
                .filter(outcome -> year.contains(outcome.day().likely()))
                .map(outcomes::say);
        return season(life, year) + ": "
                + Stream.concat(Stream.of(bloom(year.bloom().pot())), scores).collect(Collectors.joining(", "));
    }

    private String season(PotLife life, Year year) {
        return year.bloom()
                .pot()
                .firstFlower()
                .map(Day::likely)
                .or(() -> year.began().map(Day::likely))
                .map(journal::seasonOf)
                .orElse(life.pot().season())
                .name(journal.settings().seasonStart());
    }

    private static String bloom(Bloom.Points points) {
        Optional<LocalDate> first = points.firstFlower().map(Day::likely);
        Optional<LocalDate> past = points.pastBloom().map(Day::likely);
        return first.map(from -> past.map(to -> "in flower " + Days.fromTo(from, to))
                        .orElseGet(() -> "in flower from " + Days.date(from)))
                .orElse("no flower written");
    }
}
