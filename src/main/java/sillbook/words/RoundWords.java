// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Event;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.ColdTime;
import sillbook.season.PotNow;

/** What a round says of pots, on the screen and on paper, and the line it is written as. */
public record RoundWords(Journal journal) {
    private static final Pattern PARTS_WORDS = Pattern.compile("[,;:()'‘’]");

    /** Those of one batch together, where the first of them stands. */
    public List<List<Id<Pot>>> rows(List<Id<Pot>> pots) {
        Map<Id<?>, List<Id<Pot>>> together = new LinkedHashMap<>();
        for (Id<Pot> pot : pots) {
            Id<?> key =
                    journal.pots().get(pot).batch().<Id<?>>map(batch -> batch).orElse(pot);
            together.computeIfAbsent(key, none -> new ArrayList<>()).add(pot);
        }
        return List.copyOf(together.values());
    }

    /** The last entry of a check; empty when nobody looked yet. */
    public Optional<Event> lastCheck(Id<Pot> pot) {
        return journal.history(pot).stream()
                .filter(event -> event.what() instanceof Happening.Checked)
                .reduce((earlier, later) -> later);
    }

    /** What the last check saw, as short as a column wants it: troubles, roots and shoot, else how wet it was. */
    public String lastTime(Id<Pot> pot) {
        return lastCheck(pot)
                .map(event -> ((Happening.Checked) event.what()).findings())
                .map(this::brief)
                .orElse("");
    }

    /** The same of pots that share a row: where they differ, each with its label, the fewest first. */
    public String lastTime(List<Id<Pot>> row) {
        Map<String, List<Id<Pot>>> seen = new LinkedHashMap<>();
        row.forEach(pot ->
                seen.computeIfAbsent(lastTime(pot), none -> new ArrayList<>()).add(pot));
        if (seen.size() == 1) {
            return lastTime(row.get(0));
        }
        PotNames names = new PotNames(journal);
        return seen.entrySet().stream()
                .filter(one -> !one.getKey().isEmpty())
                .sorted(Comparator.comparingInt(one -> one.getValue().size()))
                .map(one -> names.labels(one.getValue()) + " " + one.getKey())
                .collect(Collectors.joining("; "));
    }

    private String brief(Findings found) {
        List<String> said = new ArrayList<>();
        found.troubles().stream().sorted().map(Terms.TROUBLES::say).forEach(said::add);
        LengthUnit unit = journal.settings().lengths();
        Entries.roots(found, unit).ifPresent(said::add);
        Optional<String> shoot = found.shoot().map(length -> Lengths.say(length, unit));
        shoot.ifPresent(length -> said.add(said.isEmpty() ? "shoot " + length : length));
        return said.isEmpty() ? wetness(found) : String.join(", ", said);
    }

    private static String wetness(Findings found) {
        return found.moisture()
                .map(Terms.MOISTURES::say)
                .or(() -> found.water().map(Terms.WATERS::say))
                .or(() -> found.firmness().map(Terms.FIRMNESSES::say))
                .orElse("");
    }

    /** Whole weeks since it was potted into the cold, and those that count; empty without cold. */
    public static Optional<ColdWeeks> weeks(PotNow now) {
        ColdTime cold = now.life().cold();
        return Optional.of(cold)
                .filter(had -> had.daysIn() > 0)
                .map(had -> new ColdWeeks(inWeeks(had.daysIn()), inWeeks(had.daysColdEnough())));
    }

    private static int inWeeks(int days) {
        return (int) Math.round(Weeks.ofDays(days));
    }

    /** Weeks in the cold, to the nearest whole one, and of these those that were cold enough. */
    public record ColdWeeks(int in, int coldEnough) {}

    /** The line that writes down a round: all are well but for what is said of some. */
    public static String line(Place place, List<String> exceptions) {
        return String.join(
                ", ",
                Stream.concat(Stream.of(quoted(place.name()) + " all well"), exceptions.stream())
                        .toList());
    }

    /** {@code 6 pots}, {@code 6 pots, dry bulbs}, {@code dry bulbs}: what a round looks at. */
    public static String what(int pots, boolean isAnyDry) {
        String counted = Counts.of(pots, "pot");
        if (!isAnyDry) {
            return counted;
        }
        return pots == 0 ? "dry bulbs" : counted + ", dry bulbs";
    }

    /** How a line names the dry bulbs of a variety: {@code Marrow Lane bulbs}. */
    public static String bulbs(String variety) {
        return quoted(variety) + " bulbs";
    }

    /** What a comma, a bracket or a quote would part stands in quotes, in which it is one word. */
    public static String quoted(String words) {
        return PARTS_WORDS.matcher(words).find() ? '"' + words + '"' : words;
    }
}
