// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import sillbook.handbook.FigureName;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Milestone;
import sillbook.words.Days;
import sillbook.words.Kinds;

/** What {@code reckon dates} is told of a pot. */
final class DatesOptions {
    @Option(
            names = "--kind",
            paramLabel = "K",
            description = "The kind of bulb, always wanted; perhaps with its class: 'tulip triumph'.")
    private Optional<String> kind = Optional.empty();

    @Option(names = "--potted", paramLabel = "DAY", description = "The day it was potted and watered.")
    private Optional<String> potted = Optional.empty();

    @Option(names = "--cold-from", paramLabel = "DAY", description = "The day its cold began; else that of potting.")
    private Optional<String> coldFrom = Optional.empty();

    @Option(names = "--out", paramLabel = "DAY", description = "The day it was really brought out of the cold.")
    private Optional<String> out = Optional.empty();

    @Option(names = "--bloom", paramLabel = "DAY", description = "The day it is wished to flower.")
    private Optional<String> bloom = Optional.empty();

    @Option(
            names = "--cold-weeks",
            paramLabel = "N|L,T,H",
            description = "The whole cold it needs, weeks had dry included.")
    private Optional<String> coldWeeks = Optional.empty();

    @Option(
            names = "--after-weeks",
            paramLabel = "N|L,T,H",
            description = "From the end of the cold, or from potting where none is needed, to the first flower.")
    private Optional<String> afterWeeks = Optional.empty();

    @Option(names = "--cooled", paramLabel = "WEEKS", description = "Weeks its bulbs were cooled dry, before potting.")
    private Optional<String> cooled = Optional.empty();

    Kind kind(Kinds kinds) {
        return Given.read(kinds.parse(
                kind.orElseThrow(() -> new Misused("No kind is given, but one is needed. Write --kind and a kind."))));
    }

    Optional<LocalDate> potted(LocalDate today) {
        return potted.map(text -> Given.dayNear(text, today));
    }

    /** The figures given, each to stand over the handbook's. */
    Map<FigureName, Range> figures() {
        Map<FigureName, Range> figures = new EnumMap<>(FigureName.class);
        coldWeeks.ifPresent(text -> figures.put(FigureName.COLD, Given.range(text)));
        afterWeeks.ifPresent(text -> figures.put(FigureName.AFTER_COLD, Given.range(text)));
        return figures;
    }

    /** The days given, in order. */
    Facts facts(LocalDate today) {
        Optional<LocalDate> began = coldFrom.map(text -> Given.dayNear(text, today));
        Optional<LocalDate> broughtOut = out.map(text -> Given.dayNear(text, today));
        Optional<LocalDate> wish = bloom.map(text -> Given.dayAhead(text, today));
        Facts facts =
                cooled.map(text -> Facts.NONE.withDryWeeks(Given.weeks(text))).orElse(Facts.NONE);
        facts = potted(today).map(facts::withPotted).orElse(facts);
        for (var known :
                Map.of(Milestone.COLD, began, Milestone.COOL_ROOM, broughtOut).entrySet()) {
            if (known.getValue().isPresent()) {
                facts = facts.with(known.getKey(), known.getValue().get());
            }
        }
        facts = wish.isPresent() ? facts.withWish(wish.get()) : facts;
        facts.disorder().ifPresent(disorder -> {
            throw new Misused(Days.full(disorder.day()) + " is before " + Days.full(disorder.notBefore())
                    + ", which has to come first. Write the days in order.");
        });
        return facts;
    }
}
